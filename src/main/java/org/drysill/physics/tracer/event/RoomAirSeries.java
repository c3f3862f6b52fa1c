package org.drysill.physics.tracer.event;

import java.util.stream.IntStream;
import org.drysill.physics.tracer.Gaps;

/**
 * Vapour and temperature of a room in the order of time; readings without vapour are left out.
 *
 * <p>Vapour is the content of the indoor air itself: outdoor air moves slowly against an event, and
 * to subtract it would add its noise.
 */
public final class RoomAirSeries {
  private final double[] hours;
  private final double[] vapour;
  private final double[] celsius;

  private RoomAirSeries(double[] hours, double[] vapour, double[] celsius) {
    this.hours = hours;
    this.vapour = vapour;
    this.celsius = celsius;
  }

  /**
   * A series.
   *
   * @param hours times [h], each after the one before
   * @param vapour content of the indoor air, in any unit; NaN where it is missing
   * @param celsius temperature [°C]; NaN where it is missing
   */
  public static RoomAirSeries of(double[] hours, double[] vapour, double[] celsius) {
    if (vapour.length != hours.length || celsius.length != hours.length) {
      throw new IllegalArgumentException(
          "expected " + hours.length + " values but was " + vapour.length + ", " + celsius.length);
    }
    int[] present =
        IntStream.range(0, hours.length).filter(i -> !Double.isNaN(vapour[i])).toArray();
    return new RoomAirSeries(
        picked(hours, present), picked(vapour, present), picked(celsius, present));
  }

  private static double[] picked(double[] values, int[] present) {
    return IntStream.of(present).mapToDouble(i -> values[i]).toArray();
  }

  double[] hours() {
    return hours.clone();
  }

  double[] vapour() {
    return vapour.clone();
  }

  double hour(int index) {
    return hours[index];
  }

  double vapour(int index) {
    return vapour[index];
  }

  /** How far the temperature falls below its first reading [K]; 0 where there are none. */
  double coolingKelvin(int from, int to) {
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = from; i <= to; i++) {
      lowest = celsius[i] < lowest ? celsius[i] : lowest;
    }
    double cooling = celsius[from] - lowest;
    return Double.isFinite(cooling) ? cooling : 0;
  }

  /** The last index up to a limit whose reading is no later than a time. */
  int lastUntil(double hour, int from, int limit) {
    int last = from;
    while (last < limit && hours[last + 1] <= hour + Gaps.ROUNDING_HOURS) {
      last++;
    }
    return last;
  }
}
