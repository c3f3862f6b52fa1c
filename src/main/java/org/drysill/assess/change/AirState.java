package org.drysill.assess.change;

import java.util.List;
import java.util.function.Function;
import org.drysill.assess.Figure;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * The mean air of a place at a visit.
 *
 * @param temperature [°C]
 * @param pressure vapour pressure [Pa]
 * @param humidity relative humidity over water, as a ratio
 * @param excess vapour pressure excess over outdoors [Pa]
 * @param excessError its error, plus or minus [Pa]
 * @param simultaneous whether the outdoor air behind it was read at the visit
 */
record AirState(
    Range temperature,
    Range pressure,
    Range humidity,
    Range excess,
    double excessError,
    boolean simultaneous) {

  static AirState of(List<RoomAir> readings) {
    Range temperature = mean(readings, RoomAir::temperature);
    Range pressure = mean(readings, RoomAir::vapourPressure);
    return new AirState(
        temperature,
        pressure,
        humidity(temperature, pressure, mean(readings, RoomAir::relativeHumidity)),
        mean(readings, RoomAir::excessPressure),
        readings.stream().mapToDouble(RoomAir::excessPressureError).average().orElseThrow(),
        readings.stream().allMatch(r -> r.outdoor().simultaneous()));
  }

  /** The home; its humidity has the errors of the vapour pressure. */
  static AirState of(HomeAir home) {
    Range temperature = home.temperature().value();
    Range pressure = home.vapourPressure().value();
    Range excess = home.excessPressure().value();
    double saturation = Iso13788Vapour.saturationPressureOverWaterPa(temperature.likely());
    return new AirState(
        temperature,
        pressure,
        pressure.times(1 / saturation),
        excess,
        (excess.high() - excess.low()) / 2,
        home.simultaneous());
  }

  /** Half the width of the bounds of the humidity, as a ratio. */
  double humidityError() {
    return (humidity.high() - humidity.low()) / 2;
  }

  /** The humidity of the mean air, with the bounds of the readings around it. */
  private static Range humidity(Range temperature, Range pressure, Range read) {
    double ratio =
        pressure.likely() / Iso13788Vapour.saturationPressureOverWaterPa(temperature.likely());
    return new Range(
        ratio - (read.likely() - read.low()), ratio, ratio + (read.high() - read.likely()));
  }

  private static Range mean(List<RoomAir> readings, Function<RoomAir, Figure> what) {
    return readings.stream()
        .map(r -> what.apply(r).value())
        .reduce(Range.exactly(0), Range::plus)
        .times(1.0 / readings.size());
  }
}
