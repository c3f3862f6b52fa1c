package org.drysill.assess.logs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.readings.Criterion;

/** The highest moving averages of a room's humidity against published limits. */
final class MovingAverageCriteria {
  private static final double DAY_S = 86_400;
  private final RoomFacts room;
  private final Trace trace;
  private final double humidityError;
  private final double coverage;

  /**
   * For a room.
   *
   * @param humidityError of its hygrometer, plus or minus [ratio]
   * @param coverage least share of a stretch with readings [1]
   */
  MovingAverageCriteria(RoomFacts room, Trace trace, double humidityError, double coverage) {
    this.room = room;
    this.trace = trace;
    this.humidityError = humidityError;
    this.coverage = coverage;
  }

  List<Finding> all(List<Criterion> criteria) {
    return criteria.stream().map(this::against).toList();
  }

  private Finding against(Criterion criterion) {
    return MovingMeans.highest(trace, trace::humidity, criterion.days() * DAY_S, coverage)
        .map(highest -> judged(criterion, highest))
        .orElseGet(() -> tooShort(criterion));
  }

  private Finding judged(Criterion criterion, MovingMeans highest) {
    Range value =
        new Range(
            Math.max(0, highest.mean() - humidityError),
            highest.mean(),
            Math.min(1, highest.mean() + humidityError));
    Figure found =
        new Figure(
            "log." + room.id() + ".highest_" + criterion.id() + "_mean",
            "Highest mean humidity of the " + room.name() + " over " + criterion.period(),
            value,
            Unit.RELATIVE_HUMIDITY,
            Basis.MEASURED,
            () ->
                new Working(
                    "greatest Σ φ t / Σ t of any stretch of " + days(criterion),
                    List.of(),
                    List.of(criterion.source()),
                    Optional.of(
                        "Of the stretches with readings for at least "
                            + percent(coverage)
                            + " of their time; bounds: accuracy of the hygrometer.")));
    Verdict verdict = Verdict.below(value, criterion.below().value());
    return finding(
        criterion,
        verdict,
        Optional.of(found),
        said(criterion, verdict) + writtenFor(criterion),
        verdict == Verdict.UNKNOWN
            ? Optional.of("Check the hygrometer against salt solutions or a better one.")
            : Optional.empty());
  }

  private String said(Criterion criterion, Verdict verdict) {
    String limit = percent(criterion.below().value());
    return switch (verdict) {
      case MEETS -> "No mean over " + criterion.period() + " reached " + limit + ".";
      case SHORT -> "A mean over " + criterion.period() + " was not below " + limit + ".";
      case UNKNOWN ->
          "The highest mean over "
              + criterion.period()
              + " is so near "
              + limit
              + " that the instrument's error decides.";
    };
  }

  private Finding tooShort(Criterion criterion) {
    return finding(
        criterion,
        Verdict.UNKNOWN,
        Optional.empty(),
        "The log holds no "
            + days(criterion)
            + " with readings for "
            + percent(coverage)
            + " of the time."
            + writtenFor(criterion),
        Optional.of("Leave the logger in the room for longer than " + criterion.period() + "."));
  }

  private Finding finding(
      Criterion criterion,
      Verdict verdict,
      Optional<Figure> found,
      String because,
      Optional<String> settledBy) {
    return new Finding(
        "humidity." + room.id() + ".moving_average." + criterion.id(),
        "Humidity of the " + room.name() + ", mean over " + criterion.period(),
        Optional.of(room.id()),
        verdict,
        Direction.BELOW,
        found,
        Optional.of(limit(criterion)),
        because,
        settledBy,
        List.of(criterion.source()));
  }

  private static Figure limit(Criterion criterion) {
    return new Figure(
        "humidity.moving_average." + criterion.id() + ".limit",
        "Mean relative humidity over " + criterion.period() + " to stay below",
        Range.exactly(criterion.below().value()),
        Unit.RELATIVE_HUMIDITY,
        Basis.PUBLISHED,
        () -> new Working("as printed", List.of(), List.of(criterion.source()), Optional.empty()));
  }

  private static String writtenFor(Criterion criterion) {
    return " The limit is written for " + criterion.writtenFor() + ".";
  }

  private static String days(Criterion criterion) {
    return String.format(
        Locale.ROOT, criterion.days() == 1 ? "%.0f day" : "%.0f days", criterion.days());
  }

  private static String percent(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", ratio * 100);
  }
}
