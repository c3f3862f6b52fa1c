package org.drysill.assess.change.air;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.drysill.assess.Figure;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * The mean air of a place over the readings or the log of a visit, each value with the bounds of
 * its error.
 *
 * @param spell over what the mean is taken
 * @param temperature [°C]
 * @param humidity relative humidity of the mean air over water, as a ratio
 * @param excess vapour pressure excess over outdoors [Pa]
 * @param content vapour excess over outdoors by volume of air [kg/m³]
 * @param outdoorTemperature [°C]
 * @param outdoorPressure vapour pressure outdoors [Pa]
 * @param simultaneous whether outdoor air was read or logged at the same time
 */
record AirState(
    Spell spell,
    Range temperature,
    Range humidity,
    Range excess,
    Range content,
    Range outdoorTemperature,
    Range outdoorPressure,
    boolean simultaneous) {

  /** The mean of the readings of a room; those with outdoor air of their time, where there are. */
  static AirState of(List<RoomAir> readings) {
    List<RoomAir> paired = readings.stream().filter(r -> r.outdoor().simultaneous()).toList();
    List<RoomAir> best = paired.isEmpty() ? readings : paired;
    Range temperature = mean(best, RoomAir::temperature);
    return new AirState(
        Spell.readings(),
        temperature,
        humidity(
            temperature,
            mean(best, RoomAir::vapourPressure).likely(),
            mean(best, RoomAir::relativeHumidity)),
        mean(best, RoomAir::excessPressure),
        mean(best, RoomAir::excess),
        mean(best, r -> r.outdoor().temperature()),
        mean(best, r -> r.outdoor().vapourPressure()),
        !paired.isEmpty());
  }

  /**
   * The mean of rooms. Errors are not divided by the number of rooms: one instrument read them all,
   * and its error is the same in each.
   *
   * @param rooms the air of each room with its weight
   */
  static AirState mean(List<Weighted> rooms) {
    List<AirState> all = rooms.stream().map(Weighted::air).toList();
    Range temperature = weighted(rooms, AirState::temperature);
    double pressure = weighted(rooms, r -> Range.exactly(r.pressure())).likely();
    return new AirState(
        all.stream()
            .map(AirState::spell)
            .min(Comparator.comparingDouble(Spell::days))
            .orElseThrow(),
        temperature,
        humidity(temperature, pressure, weighted(rooms, AirState::humidity)),
        weighted(rooms, AirState::excess),
        weighted(rooms, AirState::content),
        weighted(rooms, AirState::outdoorTemperature),
        weighted(rooms, AirState::outdoorPressure),
        all.stream().allMatch(AirState::simultaneous));
  }

  /** Vapour pressure [Pa]. */
  double pressure() {
    return humidity.likely() * Iso13788Vapour.saturationPressureOverWaterPa(temperature.likely());
  }

  /** What the split of the humidity needs. */
  SplitAir forSplit() {
    return new SplitAir(temperature.likely(), humidity.likely(), outdoorPressure.likely());
  }

  /** The errors of {@link #forSplit}, plus or minus. */
  SplitAir errors() {
    return new SplitAir(half(temperature), half(humidity), half(outdoorPressure));
  }

  /** The humidity of the mean air, with the bounds of the readings around it. */
  static Range humidity(Range temperature, double pressure, Range read) {
    double ratio = pressure / Iso13788Vapour.saturationPressureOverWaterPa(temperature.likely());
    return new Range(
        ratio - (read.likely() - read.low()), ratio, ratio + (read.high() - read.likely()));
  }

  private static double half(Range range) {
    return (range.high() - range.low()) / 2;
  }

  private static Range mean(List<RoomAir> readings, Function<RoomAir, Figure> what) {
    return readings.stream()
        .map(r -> what.apply(r).value())
        .reduce(Range.exactly(0), Range::plus)
        .times(1.0 / readings.size());
  }

  private static Range weighted(List<Weighted> rooms, Function<AirState, Range> what) {
    double sum = rooms.stream().mapToDouble(Weighted::weight).sum();
    return rooms.stream()
        .map(r -> what.apply(r.air()).times(r.weight() / sum))
        .reduce(Range.exactly(0), Range::plus);
  }

  /**
   * The air of a room and how much it counts.
   *
   * @param air the air
   * @param weight above 0, such as the volume of the room
   */
  record Weighted(AirState air, double weight) {}
}
