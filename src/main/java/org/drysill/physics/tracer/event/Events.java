package org.drysill.physics.tracer.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.physics.tracer.Gaps;
import org.drysill.physics.tracer.Gaps.Part;
import org.drysill.physics.tracer.TurningPoints;
import org.drysill.physics.tracer.TurningPoints.Turn;

/** Finds the events of a series of vapour and names them by their shape. */
public final class Events {
  private final RoomAirSeries series;
  private final EventRules rules;
  private final double threshold;

  private Events(RoomAirSeries series, double scatter, EventRules rules) {
    this.series = series;
    this.rules = rules;
    this.threshold = rules.threshold(scatter);
  }

  /**
   * All events, in the order of time.
   *
   * @param scatter standard deviation of a reading of vapour
   */
  public static List<VapourEvent> find(RoomAirSeries series, double scatter, EventRules rules) {
    Events events = new Events(series, scatter, rules);
    return Gaps.between(series.hours(), rules.longestGapHours()).stream()
        .flatMap(part -> events.within(part).stream())
        .sorted(Comparator.comparingDouble(VapourEvent::startHours))
        .toList();
  }

  private List<VapourEvent> within(Part part) {
    List<VapourEvent> found = new ArrayList<>();
    List<Turn> turns = TurningPoints.of(series.vapour(), part.from(), part.to(), threshold);
    for (int i = 0; i + 1 < turns.size(); i++) {
      int from = turns.get(i).index();
      int to = turns.get(i + 1).index();
      if (turns.get(i).peak()) {
        airing(from, to, part).ifPresent(found::add);
      } else {
        found.addAll(rises(from, to, part));
      }
    }
    return found;
  }

  /** One rise, or two where a steep one stands on a slow one without a fall between. */
  private List<VapourEvent> rises(int trough, int peak, Part part) {
    int knee = knee(trough, peak);
    double slow = series.vapour(knee) - series.vapour(trough);
    double steep = series.vapour(peak) - series.vapour(knee);
    double before = series.hour(knee) - series.hour(trough);
    double after = series.hour(peak) - series.hour(knee);
    boolean alone = steep >= threshold && steep * before >= rules.steeper() * slow * after;
    if (knee == trough || !alone) {
      return List.of(rise(trough, peak, part));
    }
    return slow >= threshold
        ? List.of(rise(trough, knee, part), rise(knee, peak, part))
        : List.of(rise(knee, peak, part));
  }

  /** The reading that lies furthest below the straight line from trough to peak. */
  private int knee(int trough, int peak) {
    double pace =
        (series.vapour(peak) - series.vapour(trough)) / (series.hour(peak) - series.hour(trough));
    int knee = trough;
    double deepest = 0;
    for (int i = trough; i < peak; i++) {
      double line = series.vapour(trough) + pace * (series.hour(i) - series.hour(trough));
      if (line - series.vapour(i) > deepest) {
        deepest = line - series.vapour(i);
        knee = i;
      }
    }
    return knee;
  }

  private VapourEvent rise(int trough, int peak, Part part) {
    int start = left(trough, peak);
    double rise = series.vapour(peak) - series.vapour(trough);
    EventKind kind = rules.kind(rise, series.hour(peak) - series.hour(start));
    return new VapourEvent(
        kind, series.hour(start), series.hour(peak), recovered(trough, peak, part), rise);
  }

  /** The fall from a peak, where vapour and temperature both fall at once. */
  private Optional<VapourEvent> airing(int peak, int trough, Part part) {
    AiringShape shape = rules.airing();
    int start = left(peak, trough);
    int end = series.lastUntil(series.hour(start) + shape.mostHours(), start, trough);
    double fall = series.vapour(peak) - series.vapour(end);
    if (fall < shape.leastFall() || series.coolingKelvin(start, end) < shape.leastKelvin()) {
      return Optional.empty();
    }
    return Optional.of(
        new VapourEvent(
            EventKind.AIRING,
            series.hour(start),
            series.hour(end),
            recovered(peak, end, part),
            -fall));
  }

  /** The last reading that is nearer to a turn than a tenth of the way to the next. */
  private int left(int turn, int next) {
    double near = Math.abs(series.vapour(next) - series.vapour(turn)) / 10;
    int last = turn;
    for (int i = turn; i < next; i++) {
      last = Math.abs(series.vapour(i) - series.vapour(turn)) <= near ? i : last;
    }
    return last;
  }

  /**
   * When no more than the share is left of a change, on the straight line between two readings;
   * empty where it grows beyond its turn before that.
   */
  private OptionalDouble recovered(int base, int turn, Part part) {
    double whole = series.vapour(turn) - series.vapour(base);
    for (int i = turn + 1; i <= part.to(); i++) {
      double left = (series.vapour(i) - series.vapour(base)) / whole;
      if (left > 1) {
        return OptionalDouble.empty();
      }
      if (left <= rules.recoveredShare()) {
        double before = (series.vapour(i - 1) - series.vapour(base)) / whole;
        double share = (before - rules.recoveredShare()) / (before - left);
        return OptionalDouble.of(
            series.hour(i - 1) + share * (series.hour(i) - series.hour(i - 1)));
      }
    }
    return OptionalDouble.empty();
  }
}
