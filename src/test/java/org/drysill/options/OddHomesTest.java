package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.UnaryOperator;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Homes that are unusual and allowed: whatever is told of them is a number that can be. */
class OddHomesTest {
  private static final String FLAT = OptionsFixtures.text("small-flat");
  private static final double NO_AIR = 1e-9;

  /** One thing out of the way in each. */
  enum Odd {
    EMPTY(h -> with(h, "adults: 2", "adults: 0")),
    EMPTY_AND_LEAKING(
        h -> with(with(h, "adults: 2", "adults: 0"), "times_per_week: 14", "rate: 0..30 kg/day")),
    LEAKING_MORE_THAN_READINGS_LEAVE(
        h -> with(h, "{kind: shower, times_per_week: 14}", "{kind: leak, rate: 0.05..200 kg/day}")),
    SOURCES_OF_NOTHING(
        h ->
            with(
                with(h, "times_per_week: 14", "rate: 0 kg/day"),
                "fuel: electricity, lids_and_hood: no",
                "rate: 0..0 kg/day")),
    AS_MOIST_INDOORS_AS_OUT(
        h ->
            h.replaceAll(
                "temperature: (18|20) C, humidity: \\d+ %", "temperature: 5 C, humidity: 85 %")),
    DRIER_INDOORS(h -> h.replaceAll("C, humidity: (60|65|70|62) %", "C, humidity: 20 %")),
    WET_INDOORS(h -> h.replaceAll("C, humidity: (60|65|70|62) %", "C, humidity: 100 %")),
    ANYTHING_INDOORS(
        h ->
            h.replaceAll(
                "temperature: (18|20) C, humidity: \\d+ %",
                "temperature: 0..40 C, humidity: 0..100 %")),
    WARMER_OUTDOORS(
        h -> with(h, "temperature: 5 C, humidity: 85 %", "temperature: 24 C, humidity: 60 %")),
    EXACT(
        h ->
            with(
                with(
                    h,
                    "accuracy: 0.4 K, humidity_accuracy: 2.5 %",
                    "accuracy: 0 K, humidity_accuracy: 0 %"),
                "flow_accuracy: 5 %",
                "flow_accuracy: 0 %")),
    UNREAD(h -> h.replaceAll("(?m)^ *readings: .*\\n", "")),
    UNHEATED(h -> h.replaceAll("use: (living|bedroom|bathroom|kitchen)\\n", "use: loft\n")),
    ONE_ROOM(h -> h.substring(0, h.indexOf("  - id: bedroom"))),
    DEAD_FANS(
        h ->
            with(
                with(
                    h,
                    "kind: intermittent extract, measured",
                    "kind: fitted but not working, measured"),
                "6 l/s",
                "0 l/s")),
    FANS_OF_NOTHING(
        h -> with(with(h, "value: 6 l/s", "value: 0 l/s"), "power: 30 W", "power: 0 W")),
    TORN_BY_A_FAN(h -> with(h, "value: 6 l/s", "value: 1000 l/s")),
    AIRTIGHT(h -> with(h, "n50: 2 /h", "n50: 0.05 /h")),
    ANYTHING_LEAKS(h -> with(h, "n50: 2 /h", "n50: 0.05..60 /h")),
    SURFACES_AS_COLD_AS_OUTDOORS(h -> with(h, "temperature_factor: 0.72", "temperature_factor: 0")),
    SURFACES_AS_WARM_AS_THE_ROOM(h -> with(h, "temperature_factor: 0.72", "temperature_factor: 1")),
    SURFACES_OF_ANY_KIND(h -> with(h, "temperature_factor: 0.72", "temperature_factor: 0..1")),
    BARE_PANES(h -> with(h, "glazing: double 16 mm", "u_value: 5.8")),
    PANES_LIKE_WALLS(h -> with(h, "glazing: double 16 mm", "u_value: 0.5")),
    FREE_ENERGY(h -> with(h, "electricity: 0.27 /kWh, heat: 0.06 /kWh", "electricity: 0, heat: 0")),
    DEAR_ENERGY(
        h -> with(h, "electricity: 0.27 /kWh, heat: 0.06 /kWh", "electricity: 90, heat: 90")),
    ONE_YEAR(
        h -> with(h, "discount_rate: 3.5 %, horizon: 20 y", "discount_rate: 0 %, horizon: 1 y")),
    MONEY_GROWS_LATER(h -> with(h, "discount_rate: 3.5 %", "discount_rate: -5 %")),
    NO_MONEY(h -> h + "options: {budget: 0}\n"),
    DRY_MONTHS(
        h ->
            h.replaceAll(
                "humidity: \\[85[^]]*]", "humidity: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]")),
    FROST(
        h ->
            h.replaceAll(
                "temperature: \\[5[^]]*]",
                "temperature: [-40, -40, -30, -20, -10, 0, 0, 0, -10, -20, -30, -40]")),
    TROPICS(
        h ->
            h.replaceAll(
                "temperature: \\[5[^]]*]",
                "temperature: [35, 35, 35, 35, 35, 35, 35, 35, 35, 35, 35, 35]")),
    TINY(h -> h.replaceAll("floor_area: (26|14|4|8) m2", "floor_area: 1 m2")),
    HUGE(
        h ->
            h.replaceAll("floor_area: (26|14|4|8) m2", "floor_area: 1000 m2")
                .replace("floor_area: 48 m2", "floor_area: 5000 m2"));

    private final String survey;

    Odd(UnaryOperator<String> change) {
      survey = change.apply(FLAT);
      if (survey.equals(FLAT)) {
        throw new IllegalArgumentException(name() + " is the flat as it was");
      }
    }
  }

  private static String with(String survey, String was, String is) {
    assertThat(survey).contains(was);
    return survey.replace(was, is);
  }

  @ParameterizedTest
  @EnumSource
  void every_number_can_be_one(Odd home) {
    Assessment assessment = OptionsFixtures.assess(home.survey);
    OptionsResult options = OptionsFixtures.study(home.survey);
    assertThat(EveryNumber.faults(assessment)).isEmpty();
    assertThat(EveryNumber.faults(options)).isEmpty();
    options.packages().ifPresent(OddHomesTest::packages);
    options
        .ranked()
        .forEach(
            m -> {
              m.effect().lacksAfter().map(Figure::value).ifPresent(OddHomesTest::notBelowNothing);
              m.effect().moisture().map(Figure::value).ifPresent(OddHomesTest::notBelowNothing);
              m.money().firstCost().map(Figure::value).ifPresent(OddHomesTest::notBelowNothing);
            });
  }

  /** The best are for something, and a year has no more mornings than days. */
  private static void packages(PackagesResult packages) {
    MeasurePackage today = packages.today();
    for (MeasurePackage best : packages.best()) {
      assertThat(best.steps()).isNotEmpty();
      notBelowNothing(best.firstCost().value());
      notBelowNothing(best.lacks().value());
      assertThat(best.lacks().likely()).isLessThanOrEqualTo(today.lacks().likely() + NO_AIR);
      assertThat(best.year().wetMornings()).isBetween(0, 366);
    }
    packages.budgets().forEach(b -> assertThat(b.spent()).isLessThanOrEqualTo(b.money()));
  }

  private static void notBelowNothing(Range range) {
    assertThat(range.low()).isNotNegative();
  }

  @Test
  void two_runs_are_alike() {
    String home = Odd.LEAKING_MORE_THAN_READINGS_LEAVE.survey;
    assertThat(said(OptionsFixtures.studyAfresh(home)))
        .isEqualTo(said(OptionsFixtures.studyAfresh(home)));
  }

  private static String said(OptionsResult options) {
    return options.order() + " " + options.packages().map(PackagesResult::front);
  }
}
