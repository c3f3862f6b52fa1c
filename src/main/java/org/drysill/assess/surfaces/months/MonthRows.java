package org.drysill.assess.surfaces.months;

import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.physics.Range;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.TemperatureFactor;

/** One surface in the air of one month, ISO 13788:2012, clause 5 (memory). */
final class MonthRows {
  private MonthRows() {}

  /**
   * A row.
   *
   * @param least difference indoors to outdoors [K] below which no factor is required
   */
  static MonthRow of(int month, MonthAir air, Range factor, Criterion criterion, double least) {
    Range surface = surface(air, factor);
    Range humidity = atSurface(air, surface);
    Optional<Range> required = required(air, criterion, least);
    return new MonthRow(
        month,
        air.outdoor(),
        air.indoor(),
        air.vapour(),
        air.indoorHumidity(),
        air.dewPoint(),
        surface,
        humidity,
        highest(air, factor, criterion),
        required,
        required.map(factor::minus),
        criterion.risk(humidity.likely()),
        criterion.risk(humidity.high()));
  }

  /** Relative humidity at a surface [1] with a temperature factor. */
  static Range surfaceHumidity(MonthAir air, Range factor) {
    return atSurface(air, surface(air, factor));
  }

  private static Range surface(MonthAir air, Range factor) {
    return new Range(
        TemperatureFactor.surfaceCelsius(factor.low(), air.indoor(), air.outdoor()),
        TemperatureFactor.surfaceCelsius(factor.likely(), air.indoor(), air.outdoor()),
        TemperatureFactor.surfaceCelsius(factor.high(), air.indoor(), air.outdoor()));
  }

  private static Range atSurface(MonthAir air, Range surface) {
    return new Range(
        Iso13788Surface.humidity(air.vapour().low(), surface.high()),
        Iso13788Surface.humidity(air.vapour().likely(), surface.likely()),
        Iso13788Surface.humidity(air.vapour().high(), surface.low()));
  }

  private static Range highest(MonthAir air, Range factor, Criterion criterion) {
    return new Range(
        highest(air, factor.low(), criterion),
        highest(air, factor.likely(), criterion),
        highest(air, factor.high(), criterion));
  }

  private static double highest(MonthAir air, double factor, Criterion criterion) {
    return Iso13788Surface.highestIndoorHumidity(
        factor, air.indoor(), air.outdoor(), criterion.limit());
  }

  private static Optional<Range> required(MonthAir air, Criterion criterion, double least) {
    if (air.indoor() - air.outdoor() < least) {
      return Optional.empty();
    }
    OptionalDouble low = required(air, air.vapour().low(), criterion);
    OptionalDouble likely = required(air, air.vapour().likely(), criterion);
    OptionalDouble high = required(air, air.vapour().high(), criterion);
    return Optional.of(new Range(low.orElseThrow(), likely.orElseThrow(), high.orElseThrow()));
  }

  private static OptionalDouble required(MonthAir air, double vapour, Criterion criterion) {
    return Iso13788Surface.requiredFactor(vapour, criterion.limit(), air.indoor(), air.outdoor());
  }
}
