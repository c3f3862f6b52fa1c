package org.drysill.assess.change;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ChangeRules;
import org.drysill.survey.OutdoorReading;

/** Whether the outdoor temperatures of two visits are alike. */
final class Weather {
  private Weather() {}

  static OutdoorLikeness compare(Home before, Home after, ChangeRules rules) {
    Optional<Figure> first = mean("before", before);
    Optional<Figure> second = mean("after", after);
    double limit = rules.alikeWithin().value();
    if (first.isEmpty() || second.isEmpty()) {
      return new OutdoorLikeness(
          first, second, false, "The outdoor temperature was not read at both visits.");
    }
    double apart = Math.abs(second.get().likely() - first.get().likely());
    return new OutdoorLikeness(
        first,
        second,
        apart <= limit,
        String.format(
            Locale.ROOT,
            "Outdoors %.1f °C before and %.1f °C after: %s the %.0f K within which visits can be"
                + " compared.",
            first.get().likely(),
            second.get().likely(),
            apart <= limit ? "within" : "further apart than",
            limit));
  }

  private static Optional<Figure> mean(String when, Home home) {
    List<OutdoorReading> readings = home.survey().outdoorReadings();
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    Range mean =
        readings.stream()
            .map(reading -> reading.temperature().range())
            .reduce(Range.exactly(0), Range::plus)
            .times(1.0 / readings.size());
    return Optional.of(
        new Figure(
            "change.outdoor.temperature_" + when,
            "Mean outdoor temperature of the readings " + when,
            mean,
            Unit.CELSIUS,
            Basis.MEASURED,
            () -> working(readings)));
  }

  private static Working working(List<OutdoorReading> readings) {
    return new Working(
        "mean of the outdoor readings",
        readings.stream()
            .map(
                reading ->
                    Input.of(
                        "Te",
                        "Outdoor temperature",
                        reading.temperature().range(),
                        Unit.CELSIUS,
                        Basis.MEASURED))
            .toList(),
        List.of(),
        Optional.empty());
  }
}
