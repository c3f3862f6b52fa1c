package org.drysill.report.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** Same digits and units in every language, other marks. No-break spaces are written as spaces. */
class LocalNumbersTest {
  private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC, "GBP");
  private final LocalNumbers english = new LocalNumbers(NUMBERS, Phrases.of(Language.ENGLISH));
  private final LocalNumbers german = new LocalNumbers(NUMBERS, Phrases.of(Language.GERMAN));

  private static Figure figure(Range value, Unit unit) {
    return new Figure(
        "x",
        "x",
        value,
        unit,
        Basis.MEASURED,
        () -> new Working("x", List.of(), List.of(), Optional.empty()));
  }

  private static String spaced(String text) {
    return text.replace(Numbers.JOIN, " ");
  }

  @Test
  void marks_are_those_of_the_language() {
    Figure flow = figure(new Range(0.0055, 0.0055, 0.0055), Unit.AIRFLOW);
    assertThat(spaced(english.found(flow))).isEqualTo("5.5 l/s");
    assertThat(spaced(german.found(flow))).isEqualTo("5,5 l/s");
  }

  @Test
  void money_is_written_as_the_language_does() {
    Figure cost = figure(new Range(1595, 1595, 1595), Unit.MONEY);
    assertThat(spaced(english.money(cost))).isEqualTo("£1,595");
    assertThat(spaced(german.money(cost))).isEqualTo("1.595 £");
  }

  @Test
  void what_is_there_is_rounded_down_and_what_is_asked_up() {
    Figure flow = figure(new Range(0.00999, 0.00999, 0.00999), Unit.AIRFLOW);
    assertThat(spaced(german.found(flow))).isEqualTo("9,9 l/s");
    assertThat(spaced(german.asked(flow))).isEqualTo("10 l/s");
  }

  @Test
  void bounds_are_said_in_words() {
    Figure flow = figure(new Range(0.0201, 0.04, 0.0652), Unit.AIRFLOW);
    assertThat(spaced(english.between(flow))).isEqualTo("20 to 65 l/s");
    assertThat(spaced(german.between(flow))).isEqualTo("20 bis 65 l/s");
    Figure sharp = figure(new Range(0.04, 0.04, 0.04), Unit.AIRFLOW);
    assertThat(spaced(german.between(sharp))).isEqualTo("40 l/s");
  }
}
