package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Studied;
import org.drysill.options.site.Placing;
import org.drysill.options.site.Placings;
import org.drysill.reference.measures.Measure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No measure of the data is dead: each has a place and an effect in one of the constructed homes.
 */
class EveryMeasureTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final String WRECK = OptionsFixtures.text("wreck");

  /** The same with a bedroom that is nearly warm enough for its corner. */
  private static final String COOL =
      WRECK
          .replace("setpoint: 14 C", "setpoint: 16 C")
          .replace(
              "material: wallpaper, temperature_factor: 0.6",
              "material: wallpaper, temperature_factor: 0.8")
          .replace("temperature: 14 C, humidity: 80 %", "temperature: 16 C, humidity: 60 %");

  private static final List<Assessment> HOMES =
      Stream.of(
              WRECK,
              WRECK.replace("walls: solid brick", "walls: cavity brick"),
              COOL,
              WRECK.replace(
                  "lids_and_hood: no}",
                  "lids_and_hood: no}, {kind: leak, rate: 1..3 kg/day}, {kind: unflued heater, power:"
                      + " 3 kW, hours_per_day: 6 h}, {kind: tumble dryer without duct,"
                      + " loads_per_week: 7}"),
              OptionsFixtures.text("hidden-leak"))
          .map(OptionsFixtures::assess)
          .toList();

  private static final List<String> FIRST =
      HOMES.stream()
          .flatMap(h -> OptionsStudy.study(h, BASIS).first().stream())
          .map(FirstThing::id)
          .toList();

  static Stream<Measure> measures() {
    return BASIS.catalogue().measures().stream();
  }

  @ParameterizedTest
  @MethodSource("measures")
  void it_has_a_place_in_a_home_with_its_defect(Measure measure) {
    List<Placing> placings =
        HOMES.stream()
            .map(h -> new Placings(h, BASIS).of(measure))
            .filter(p -> !p.candidates().isEmpty())
            .toList();
    assertThat(placings).as(measure.id()).isNotEmpty();
    assertThat(placings.get(0).candidates())
        .allSatisfy(c -> assertThat(c.because()).as(measure.id()).isNotEmpty());
  }

  /** What refers to someone else, or mends a cause, moves no air and no heat; all others do. */
  @ParameterizedTest
  @MethodSource("measures")
  void it_changes_something_in_a_home_made_for_it(Measure measure) {
    boolean refers = measure.isBeforeAll() && measure.air().isEmpty() && !measure.endsSources();
    Stream<Studied> effects =
        HOMES.stream().flatMap(home -> effects(home, measure)).filter(Studied::works);
    if (refers) {
      assertThat(effects).as(measure.id()).isEmpty();
      assertThat(FIRST).contains(measure.id());
    } else {
      assertThat(effects.anyMatch(EveryMeasureTest::changes)).as(measure.id()).isTrue();
    }
  }

  private static Stream<Studied> effects(Assessment home, Measure measure) {
    EffectStudy study = new EffectStudy(home, BASIS);
    return new Placings(home, BASIS)
        .of(measure).candidates().stream().flatMap(c -> study.of(c).stream());
  }

  private static boolean changes(Studied effect) {
    return effect.addedAir() != 0
        || effect.water().likely() > 0
        || !effect.effect().settles().isEmpty()
        || effect.effect().surfaces().stream()
            .anyMatch(s -> s.monthsAfter().likely() < s.monthsBefore());
  }
}
