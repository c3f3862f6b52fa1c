package org.drysill.options.rank;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.options.SurfaceChange;
import org.drysill.physics.Range;

/** What a measure does, in figures: air first, then walls, and glass where those are settled. */
record Deeds(FlowText flows) {

  /** In one sentence; empty where it closes nothing and ends no month. */
  Optional<String> of(Progress progress) {
    return Stream.of(air(progress), walls(progress.walls()), glass(progress.glass()))
        .flatMap(Optional::stream)
        .limit(progress.lacksToday() > 0 ? 2 : 1)
        .reduce((a, b) -> a.substring(0, a.length() - 1) + "; " + lower(b));
  }

  private static String lower(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  private Optional<String> air(Progress progress) {
    double lacks = progress.lacksToday();
    double closed = progress.airClosed();
    if (Math.round(percent(closed, lacks)) == 0) {
      return Optional.empty();
    }
    String part = closed < lacks ? flows.provided(closed) + " of" : "all of";
    return Optional.of(
        "It closes "
            + part
            + " the "
            + flows.required(lacks)
            + " of outdoor air that the home likely lacks.");
  }

  private static double percent(double part, double whole) {
    return whole > 0 ? 100 * part / whole : 0;
  }

  private static Optional<String> walls(List<SurfaceChange> walls) {
    Range ended = Progress.ended(walls);
    if (ended.likely() <= 0) {
      return Optional.empty();
    }
    String months = "It ends " + months(ended, Progress.months(walls)) + " of mould risk a year";
    long resolved = Progress.resolved(walls);
    return Optional.of(
        walls.size() == 1
            ? months + " at the only wall or corner at risk, " + walls.get(0).name() + "."
            : months + " at " + walls.size() + " walls and corners; " + freed(resolved) + ".");
  }

  private static String freed(long resolved) {
    return resolved == 0
        ? "none of them is then likely free of it"
        : resolved + (resolved == 1 ? " is" : " are") + " then likely free of it";
  }

  private static Optional<String> glass(List<SurfaceChange> glass) {
    Range ended = Progress.ended(glass);
    return ended.likely() > 0
        ? Optional.of(
            "It ends "
                + months(ended, Progress.months(glass))
                + " of wet glass a year, summed over "
                + glass.size()
                + (glass.size() == 1 ? " window." : " windows."))
        : Optional.empty();
  }

  private static String months(Range ended, int all) {
    return whole(ended.likely())
        + (all == 1 ? " of 1 month" : " of the " + all + " months")
        + (ended.isSpread() ? " (" + whole(ended.low()) + " to " + whole(ended.high()) + ")" : "");
  }

  private static String whole(double number) {
    return Long.toString(Math.round(number));
  }
}
