package org.drysill.assess.elements;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element.Verdict;

/** How moist the indoor air may be before water settles within a wall. */
final class DryBelow {
  /** More than any room holds: saturation at 24 °C [Pa]. */
  private static final double HIGHEST = 3000;

  private static final int HALVINGS = 30;

  private final WallSubject wall;
  private final Runs runs;

  DryBelow(WallSubject wall, Runs runs) {
    this.wall = wall;
    this.runs = runs;
  }

  /** The excess at 0 °C outdoors up to which nothing settles; empty where any excess will do. */
  Optional<Figure> find() {
    double likely = highestDry(runs.likely(), Side.LIKELY, HIGHEST);
    return likely >= HIGHEST
        ? Optional.empty()
        : Optional.of(figure(new Range(least(likely), likely, most(likely))));
  }

  /** Which case is the wettest at today's moisture says nothing of which is wet first. */
  private double least(double likely) {
    double least = likely;
    for (Run run : runs.unfavourable()) {
      least = highestDry(run, Side.UNFAVOURABLE, least);
    }
    return least;
  }

  private double most(double likely) {
    double most = likely;
    for (Run run : runs.favourable()) {
      if (staysDry(run, Side.FAVOURABLE, most)) {
        most = highestDry(run, Side.FAVOURABLE, HIGHEST);
      }
    }
    return most;
  }

  private Figure figure(Range excess) {
    return new Figure(
        "element." + wall.id() + ".dry_below",
        "moisture indoors over outdoors at 0 °C up to which nothing settles within the wall",
        excess,
        Unit.PASCAL,
        Basis.CALCULATED,
        () ->
            new Working(
                "Δp at which the first water settles, found by halving",
                List.of(wall.excess()),
                wall.sources(),
                Optional.of("Reckoned month by month with the shape of the humidity classes.")));
  }

  /** The highest excess up to {@code most} that leaves a case dry. */
  private double highestDry(Run run, Side side, double most) {
    if (staysDry(run, side, most)) {
      return most;
    }
    double dry = 0;
    double wet = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (dry + wet) / 2;
      if (staysDry(run, side, middle)) {
        dry = middle;
      } else {
        wet = middle;
      }
    }
    return dry;
  }

  private boolean staysDry(Run run, Side side, double excess) {
    IndoorVapour vapour =
        new IndoorVapour(
            Range.exactly(excess), 0, Basis.ASSUMED, "trial", Optional.empty(), List.of());
    Run trial =
        Run.of(run.slices(), wall.films(), wall.climate().with(vapour::excessAt).months(side));
    return trial.year().verdict() == Verdict.NONE;
  }
}
