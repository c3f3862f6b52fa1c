package org.drysill.options.rank;

import java.util.List;
import java.util.Optional;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Figure;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.options.MeasureEffect;
import org.drysill.options.MeasureMoney;
import org.drysill.options.Payback;
import org.drysill.options.SurfaceChange;
import org.drysill.options.effect.Studied;
import org.drysill.options.money.Costed;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;

/** Entries of a ranking with just those figures that decide. */
final class Entries {
  private Entries() {}

  /**
   * An entry.
   *
   * @param measure the id of a bundled measure
   * @param annual yearly cost over the horizon, none where below 0
   * @param first first cost
   * @param wallMonths months at risk left of 12 at the one wall
   * @param airLacking l/s left of the 10 that are lacking
   * @param glassMonths months left of 12 with wet glass
   */
  static Entry of(
      String measure,
      boolean admissible,
      double annual,
      double first,
      double wallMonths,
      double airLacking,
      double glassMonths) {
    MeasureEffect effect =
        effect(
            List.of(
                new SurfaceChange("wall", "Room, corner", false, 12, Range.exactly(wallMonths)),
                new SurfaceChange("pane", "Room, window", true, 12, Range.exactly(glassMonths))),
            10,
            airLacking,
            List.of());
    return of(measure, admissible, effect, money(annual, first));
  }

  /** An entry that leaves walls, air and glass as they are and settles findings. */
  static Entry settling(String measure, String... findings) {
    return of(measure, true, effect(List.of(), 10, 10, List.of(findings)), money(10, 100));
  }

  private static Entry of(
      String measure, boolean admissible, MeasureEffect effect, MeasureMoney money) {
    return new Entry(
        new Costed(
            new Studied(
                new Candidate(OptionsFixtures.measure(measure), List.of(), List.of(), List.of()),
                effect,
                Optional.empty(),
                List.of(),
                Range.exactly(0),
                true),
            money,
            0,
            Optional.empty()),
        List.of(),
        admissible);
  }

  /** An effect on surfaces and on the air that is lacking [l/s]. */
  static MeasureEffect effect(
      List<SurfaceChange> surfaces, double lacks, double still, List<String> settles) {
    return new MeasureEffect(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(figure(lacks / 1000, Unit.AIRFLOW)),
        Optional.of(figure(still / 1000, Unit.AIRFLOW)),
        Optional.empty(),
        List.of(),
        settles,
        surfaces,
        Verdict.UNKNOWN,
        Verdict.UNKNOWN,
        Optional.of(
            figure(
                surfaces.stream()
                    .filter(SurfaceChange::glass)
                    .mapToDouble(s -> s.monthsAfter().likely())
                    .sum(),
                Unit.COUNT)),
        List.of());
  }

  private static MeasureMoney money(double annual, double first) {
    Figure none = figure(0, Unit.KWH_PER_YEAR);
    Optional<Figure> cost =
        annual < 0 ? Optional.empty() : Optional.of(figure(annual, Unit.MONEY_PER_YEAR));
    return new MeasureMoney(
        Optional.empty(),
        cost.map(c -> figure(first, Unit.MONEY)),
        none,
        none,
        none,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        none,
        Optional.empty(),
        cost,
        new Payback(Payback.Kind.NEVER, "doing nothing", Optional.empty(), "It never pays."),
        Optional.empty(),
        Optional.empty());
  }

  private static Figure figure(double value, Unit unit) {
    return HomeFixtures.figure("test", Range.exactly(value), unit);
  }
}
