package org.drysill.assess.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An hour of the typical day.
 *
 * @param hour on the clock of the place, 0 to 23
 * @param celsius mean temperature [°C]
 * @param humidity mean relative humidity [ratio]
 * @param humidityLow a tenth of the time it is lower [ratio]
 * @param humidityHigh a tenth of the time it is higher [ratio]
 * @param contentKgM3 mean vapour content [kg/m³]
 */
public record HourOfDay(
    int hour,
    double celsius,
    double humidity,
    double humidityLow,
    double humidityHigh,
    double contentKgM3) {
  private static final int HOURS = 24;
  private static final double TENTH = 0.1;

  /** The hours of the typical day that have readings. */
  static List<HourOfDay> of(Trace trace) {
    List<List<Integer>> byHour =
        IntStream.range(0, HOURS).mapToObj(h -> (List<Integer>) new ArrayList<Integer>()).toList();
    for (int i = 0; i < trace.size(); i++) {
      if (trace.seconds(i) > 0) {
        byHour.get(trace.begin(i).getHour()).add(i);
      }
    }
    return IntStream.range(0, HOURS)
        .filter(h -> !byHour.get(h).isEmpty())
        .mapToObj(h -> of(trace, h, byHour.get(h)))
        .toList();
  }

  private static HourOfDay of(Trace trace, int hour, List<Integer> steps) {
    Sums celsius = new Sums();
    Sums humidity = new Sums();
    Sums content = new Sums();
    for (int i : steps) {
      celsius.add(trace.celsius(i), trace.seconds(i));
      humidity.add(trace.humidity(i), trace.seconds(i));
      content.add(trace.contentKgM3(i), trace.seconds(i));
    }
    double[] sorted = steps.stream().mapToDouble(trace::humidity).sorted().toArray();
    return new HourOfDay(
        hour,
        celsius.mean(),
        humidity.mean(),
        sorted[at(sorted, TENTH)],
        sorted[at(sorted, 1 - TENTH)],
        content.mean());
  }

  private static int at(double[] sorted, double share) {
    return (int) Math.round(share * (sorted.length - 1));
  }
}
