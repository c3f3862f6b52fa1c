package org.drysill.assess.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.drysill.assess.change.ChangeFixtures.Visit;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.assess.change.shown.Shown;
import org.drysill.assess.change.visit.VisitFacts;

/** What holds of any two visits. */
class ChangeProperties {
  private static VisitFacts facts(
      double celsius, double percent, double outdoors, double factor, double mould, int flow) {
    String rooms =
        """
        - id: bed
          use: bedroom
          readings: [{temperature: %.2f C, humidity: %.2f %%, instrument: fine}]
          cold_spots: [{id: corner, kind: external corner, temperature_factor: %.3f, mould_area: %.3f m2}]
          fans: [{id: fan, kind: intermittent extract, measured_flow: {value: %d l/s, instrument: hood}}]
        """
            .formatted(celsius, percent, factor, mould, flow);
    String outdoor = "{temperature: %.2f C, humidity: 80 %%, instrument: fine}".formatted(outdoors);
    return ChangeFixtures.facts("2026-01-22", new Visit(outdoor, rooms, ""));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void swapping_the_visits_turns_every_sign(
      @ForAll @DoubleRange(min = 16, max = 23) double celsius,
      @ForAll @DoubleRange(min = 35, max = 80) double percent,
      @ForAll @DoubleRange(min = 3, max = 7) double outdoors,
      @ForAll @DoubleRange(min = 0.4, max = 0.9) double factor,
      @ForAll @DoubleRange(min = 0.01, max = 2) double mould,
      @ForAll @IntRange(min = 2, max = 30) int flow) {
    VisitFacts one = facts(19, 60, 5, 0.7, 0.5, 10);
    VisitFacts two = facts(celsius, percent, outdoors, factor, mould, flow);
    ChangeResult there = ChangeAssessor.assess(one, two, ChangeFixtures.RULES);
    ChangeResult back = ChangeAssessor.assess(two, one, ChangeFixtures.RULES);
    AirChange a = there.home().orElseThrow();
    AirChange b = back.home().orElseThrow();
    opposite(a.humidity().points().likely(), b.humidity().points().likely());
    opposite(a.humidity().fromTemperature().likely(), b.humidity().fromTemperature().likely());
    opposite(indoors(a), indoors(b));
    opposite(a.excess().change().likely(), b.excess().change().likely());
    opposite(a.excess().contentChange().likely(), b.excess().contentChange().likely());
    List<Judgement> first = judgements(there);
    List<Judgement> second = judgements(back);
    for (int i = 0; i < first.size(); i++) {
      assertThat(second.get(i).shown()).isEqualTo(turned(first.get(i).shown()));
    }
  }

  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void identical_visits_show_no_change(
      @ForAll @DoubleRange(min = 16, max = 23) double celsius,
      @ForAll @DoubleRange(min = 35, max = 80) double percent,
      @ForAll @DoubleRange(min = -5, max = 10) double outdoors,
      @ForAll @DoubleRange(min = 0.4, max = 0.9) double factor,
      @ForAll @DoubleRange(min = 0, max = 2) double mould) {
    VisitFacts visit = facts(celsius, percent, outdoors, factor, mould, 10);
    ChangeResult same = ChangeAssessor.assess(visit, visit, ChangeFixtures.RULES);
    assertThat(judgements(same)).extracting(Judgement::shown).containsOnly(Shown.NOT_SHOWN);
    assertThat(same.home().orElseThrow().excess().change().likely()).isZero();
    assertThat(same.verdicts()).isEmpty();
    assertThat(same.notCompared()).isEmpty();
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void the_three_parts_are_the_whole(
      @ForAll @DoubleRange(min = 16, max = 23) double celsius,
      @ForAll @DoubleRange(min = 35, max = 80) double percent,
      @ForAll @DoubleRange(min = 3, max = 7) double outdoors) {
    AirChange home =
        ChangeAssessor.assess(
                facts(19, 60, 5, 0.7, 0.5, 10),
                facts(celsius, percent, outdoors, 0.7, 0.5, 10),
                ChangeFixtures.RULES)
            .home()
            .orElseThrow();
    double parts =
        home.humidity().fromTemperature().likely()
            + home.humidity().fromOutdoors().orElseThrow().likely()
            + indoors(home);
    assertThat(parts).isCloseTo(home.humidity().points().likely(), within(1e-12));
  }

  private static double indoors(AirChange air) {
    return air.humidity().fromIndoors().orElseThrow().likely();
  }

  private static List<Judgement> judgements(ChangeResult change) {
    return List.of(
        change.home().orElseThrow().humidity().judgement(),
        change.home().orElseThrow().excess().judgement(),
        change.rooms().get(0).excess().judgement(),
        change.coldSpots().get(0).sameAir().orElseThrow().judgement(),
        change.mould().orElseThrow().judgement(),
        change.fans().get(0).judgement());
  }

  private static Shown turned(Shown shown) {
    return switch (shown) {
      case FELL -> Shown.ROSE;
      case ROSE -> Shown.FELL;
      case NOT_SHOWN -> Shown.NOT_SHOWN;
    };
  }

  private static void opposite(double there, double back) {
    assertThat(back).isCloseTo(-there, within(1e-9));
  }
}
