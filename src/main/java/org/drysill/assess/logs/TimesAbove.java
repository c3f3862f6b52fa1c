package org.drysill.assess.logs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.readings.Threshold;

/** For how long the air of a room was above each threshold, with the hygrometer's error. */
final class TimesAbove {
  private final RoomFacts room;
  private final Trace trace;
  private final double error;

  /**
   * For a room.
   *
   * @param error of its hygrometer, plus or minus [ratio]
   */
  TimesAbove(RoomFacts room, Trace trace, double error) {
    this.room = room;
    this.trace = trace;
    this.error = error;
  }

  List<TimeAbove> all(List<Threshold> thresholds) {
    return thresholds.stream().map(this::above).toList();
  }

  private TimeAbove above(Threshold threshold) {
    double limit = threshold.humidity().value();
    double all = trace.hours(i -> true);
    Range hours = new Range(hours(limit + error), hours(limit), hours(limit - error));
    String percent = String.format(Locale.ROOT, "%.0f", limit * 100);
    String id = "log." + room.id() + ".above_" + percent;
    Figure above =
        new Figure(
            id,
            "Time above " + percent + " % in the " + room.name(),
            hours,
            Unit.HOURS,
            Basis.MEASURED,
            () ->
                new Working(
                    "Σ t where φ > limit",
                    List.of(
                        Input.of(
                            "limit",
                            "Relative humidity",
                            Range.exactly(limit),
                            Unit.RELATIVE_HUMIDITY,
                            Basis.PUBLISHED)),
                    List.of(threshold.source()),
                    Optional.of(
                        "Bounds: the hygrometer reads too high, or too low, by its error.")));
    Figure share =
        new Figure(
            id + "_share",
            "Share of the log above " + percent + " % in the " + room.name(),
            hours.times(1 / all),
            Unit.PERCENT,
            Basis.MEASURED,
            () ->
                new Working(
                    "hours above / hours with readings",
                    List.of(
                        Input.of("hours above", above),
                        Input.of(
                            "hours with readings",
                            "Time with readings",
                            Range.exactly(all),
                            Unit.HOURS,
                            Basis.MEASURED)),
                    List.of(),
                    Optional.empty()));
    return new TimeAbove(limit, above, share);
  }

  private double hours(double limit) {
    return trace.hours(i -> trace.humidity(i) > limit);
  }
}
