package org.drysill.assess.humidity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.readings.Criterion;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.readings.Threshold;

/** Room readings against thresholds, and the criteria that only a logger can judge. */
final class HumidityFindings {
  static final String LOGGER =
      "Leave a logger of temperature and humidity in the room for at least 4 weeks of the heating"
          + " season.";

  private final ReadingRules rules;

  HumidityFindings(ReadingRules rules) {
    this.rules = rules;
  }

  List<Finding> all(Home home, List<RoomAir> readings, List<Finding> logged) {
    List<Finding> all = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      Optional<RoomAir> wettest =
          readings.stream()
              .filter(r -> r.room().equals(room.id()))
              .max(Comparator.comparingDouble(r -> r.relativeHumidity().likely()));
      if (wettest.isPresent()) {
        rules.thresholds().forEach(threshold -> all.add(against(threshold, wettest.get())));
      } else if (room.heated()) {
        all.add(notRead(room));
      }
    }
    if (logged.isEmpty()) {
      rules.criteria().forEach(criterion -> all.add(movingAverage(criterion)));
    }
    all.addAll(logged);
    return all;
  }

  private static Finding against(Threshold threshold, RoomAir air) {
    double limit = threshold.humidity().value();
    String percent = percent(limit);
    Verdict verdict = Verdict.below(air.relativeHumidity().value(), limit);
    String compared =
        switch (verdict) {
          case MEETS -> "The reading is below " + percent + ".";
          case SHORT -> "The reading is not below " + percent + ": " + threshold.meaning() + ".";
          case UNKNOWN ->
              "The reading is so near " + percent + " that the instrument's error decides.";
        };
    return new Finding(
        "humidity." + air.room() + ".below_" + Math.round(limit * 100),
        "Humidity of the " + air.roomName() + " against " + percent,
        Optional.of(air.room()),
        verdict,
        Direction.BELOW,
        Optional.of(air.relativeHumidity()),
        Optional.of(limit("humidity." + air.room() + ".limit", threshold.source(), limit)),
        compared + " It is the reading of one moment.",
        verdict == Verdict.UNKNOWN ? Optional.of(LOGGER) : Optional.empty(),
        List.of(threshold.source()));
  }

  private static Finding notRead(RoomFacts room) {
    return new Finding(
        "humidity." + room.id() + ".not_read",
        "Humidity of the " + room.name(),
        Optional.of(room.id()),
        Verdict.UNKNOWN,
        Direction.NONE,
        Optional.empty(),
        Optional.empty(),
        "No humidity was read in this room.",
        Optional.of("Read temperature and relative humidity in the " + room.name() + "."),
        List.of());
  }

  private static Finding movingAverage(Criterion criterion) {
    double limit = criterion.below().value();
    return new Finding(
        "humidity.moving_average." + criterion.id(),
        "Mean humidity over " + criterion.period(),
        Optional.empty(),
        Verdict.UNKNOWN,
        Direction.BELOW,
        Optional.empty(),
        Optional.of(limit("humidity.moving_average." + criterion.id(), criterion.source(), limit)),
        "The limit of "
            + percent(limit)
            + " is one of a mean over "
            + criterion.period()
            + ", written for "
            + criterion.writtenFor()
            + "; one reading cannot judge it.",
        Optional.of(LOGGER),
        List.of(criterion.source()));
  }

  private static Figure limit(String id, Citation source, double limit) {
    return new Figure(
        id + ".below_" + Math.round(limit * 100),
        "Relative humidity to stay below",
        Range.exactly(limit),
        Unit.RELATIVE_HUMIDITY,
        Basis.PUBLISHED,
        () -> new Working("as printed", List.of(), List.of(source), Optional.empty()));
  }

  private static String percent(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", ratio * 100);
  }
}
