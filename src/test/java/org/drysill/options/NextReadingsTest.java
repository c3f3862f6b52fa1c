package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.options.Sureness.Input;
import org.drysill.options.Sureness.InputKind;
import org.drysill.options.Sureness.Result;
import org.drysill.options.Sureness.ResultKind;
import org.drysill.options.Sureness.Share;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingAdvice;
import org.junit.jupiter.api.Test;

class NextReadingsTest {
  private static final ReadingAdvice ADVICE = ReadingAdvice.read();

  /** A tight flat whose air comes from one fan, of which only the maker's flow is known. */
  private static final String FAN =
      OptionsFixtures.text("small-flat")
          .replaceFirst(
              "(?m)^    fans: .*$",
              "    fans: [{id: fan, kind: continuous extract, DECLARED, power: 4 W, run: continuous}]")
          .replace("n50: 2 /h", "n50: 0.6 /h")
          .replace("temperature_factor: 0.72", "temperature_factor: 0.9");

  private static List<NextReading> next(String text) {
    return OptionsFixtures.study(text).next();
  }

  @Test
  void an_unmeasured_flow_that_makes_the_doubt_is_named_first_and_gone_once_it_is_measured() {
    List<NextReading> before = next(FAN.replace("DECLARED", "declared_flow: 20 l/s"));
    assertThat(before).isNotEmpty().hasSizeLessThanOrEqualTo(ADVICE.most());
    NextReading first = before.get(0);
    assertThat(first.input()).isEqualTo("fan.fan");
    assertThat(first.room()).contains("bathroom");
    assertThat(first.ask()).startsWith("Measure the flow");
    assertThat(first.ask()).doesNotContain("the the");
    // The rest of the doubt is what new fans will do, which no reading tells before they are there.
    assertThat(before.stream().skip(1)).allMatch(other -> other.ofAir() < 0.5 * first.ofAir());
    assertThat(first.with()).contains("flow hood");
    List<NextReading> after =
        next(FAN.replace("DECLARED", "measured_flow: {value: 15 l/s, instrument: hood}"));
    assertThat(after).noneMatch(n -> n.input().equals("fan.fan"));
  }

  private static Input input(String id, InputKind kind, double air, double walls, double lead) {
    return new Input(
        id,
        kind,
        Optional.of("somewhere"),
        "how it is: Room, corner",
        Basis.ASSUMED,
        "nothing",
        List.of(
            new Share(ResultKind.AIR, air, 0.03, 0, 1),
            new Share(ResultKind.RESERVE, walls, 0.03, 0, 1),
            new Share(ResultKind.LEAD, lead, 0.03, 0, 1)));
  }

  private static Sureness sureness(double air, double walls, double lead, Input... inputs) {
    return new Sureness(
        200,
        10,
        List.of(
            result(ResultKind.AIR, air),
            result(ResultKind.RESERVE, walls),
            result(ResultKind.LEAD, lead),
            new Result(
                ResultKind.COST,
                "cost",
                Unit.MONEY_PER_YEAR,
                new Range(1, 2, 3),
                Optional.empty())),
        List.of(inputs));
  }

  /** Nine in ten between 1 and 3. */
  private static Result result(ResultKind kind, double target) {
    return new Result(kind, "x", Unit.RATIO, new Range(1, 2, 3), Optional.of(target));
  }

  private static List<NextReading> of(Sureness sureness) {
    // Its home surely lacks air, so that only the samples open a result.
    return new NextReadings(OptionsFixtures.assess(OptionsFixtures.text("small-flat")), ADVICE)
        .of(sureness);
  }

  @Test
  void only_what_is_open_asks_for_readings() {
    Input leaks = input("leaks", InputKind.LEAKS, 0.8, 0.3, 0.1);
    assertThat(of(sureness(0.5, 0.5, 5, leaks))).isEmpty();
    NextReading ranking = of(sureness(0.5, 0.5, 2, leaks)).get(0);
    assertThat(List.of(ranking.ofAir(), ranking.ofMould(), ranking.ofRanking()))
        .containsExactly(0.0, 0.0, 0.1);
    NextReading all = of(sureness(2, 2, 2, leaks)).get(0);
    assertThat(List.of(all.ofAir(), all.ofMould(), all.ofRanking())).containsExactly(0.8, 0.3, 0.1);
    assertThat(all.most()).isEqualTo(0.8);
    assertThat(NextReadings.open(sureness(0.5, 0.5, 5), Verdict.UNKNOWN))
        .containsExactly(ResultKind.AIR);
    assertThat(NextReadings.open(sureness(0.5, 0.5, 5), Verdict.SHORT)).isEmpty();
  }

  @Test
  void small_shares_and_those_of_chance_ask_for_nothing_and_five_are_enough() {
    assertThat(of(sureness(2, 2, 2, input("a", InputKind.WATER, 0.04, 0.059, 0)))).isEmpty();
    Input[] many =
        Stream.of(InputKind.LEAKS, InputKind.FAN, InputKind.WATER, InputKind.DOORS)
            .flatMap(k -> Stream.of(k, k))
            .map(k -> input(k + ".x", k, 0.1 + 0.01 * k.name().length(), 0, 0))
            .toArray(Input[]::new);
    List<NextReading> next = of(sureness(2, 2, 2, many));
    assertThat(next).hasSize(5);
    assertThat(next).isSortedAccordingTo((a, b) -> Double.compare(b.most(), a.most()));
  }

  @Test
  void what_no_reading_settles_is_not_asked_for() {
    assertThat(of(sureness(2, 2, 2, input("effect.x", InputKind.EFFECT, 0.9, 0.9, 0.9)))).isEmpty();
  }

  @Test
  void every_sort_but_effects_has_its_reading_and_every_reading_its_sort() {
    List<String> kinds =
        Stream.of(InputKind.values())
            .filter(k -> k != InputKind.EFFECT)
            .map(k -> k.name().toLowerCase(Locale.ROOT))
            .toList();
    assertThat(ADVICE.advice())
        .extracting(ReadingAdvice.Advice::kind)
        .containsExactlyInAnyOrderElementsOf(kinds);
  }

  @Test
  void names_and_places_stand_in_the_instruction_and_others_become_needless() {
    NextReading surface = of(sureness(2, 2, 2, input("s", InputKind.SURFACE, 0, 0.5, 0))).get(0);
    assertThat(surface.ask()).endsWith("outdoors: Room, corner.");
    assertThat(surface.room()).isEmpty();
    NextReading log = of(sureness(2, 2, 2, input("e", InputKind.EXCESS, 0, 0.5, 0))).get(0);
    assertThat(log.room()).contains("somewhere");
    String other = "Leave a logger of temperature and humidity in the room.";
    assertThat(log.covers(other, Optional.of("somewhere"))).isTrue();
    assertThat(log.covers(other, Optional.empty())).isTrue();
    assertThat(log.covers(other, Optional.of("elsewhere"))).isFalse();
    assertThat(log.covers("Something else.", Optional.of("somewhere"))).isFalse();
  }
}
