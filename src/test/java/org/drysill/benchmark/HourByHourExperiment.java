package org.drysill.benchmark;

import java.util.List;
import java.util.stream.LongStream;
import org.drysill.options.packs.HourByHour;

/**
 * How often the best package by month is the best hour by hour, in made-up homes of which every
 * package is evaluated by itself through all hours of a year.
 *
 * <pre>
 * java -cp target/classes:target/test-classes:target/drysill.jar org.drysill.benchmark.HourByHourExperiment 100
 * </pre>
 */
final class HourByHourExperiment {
  private HourByHourExperiment() {}

  public static void main(String[] arguments) {
    int homes = Integer.parseInt(arguments[0]);
    List<HourByHour.Compared> all =
        LongStream.range(0, homes).parallel().mapToObj(HourByHour::home).toList();
    all.stream().filter(c -> !c.same()).forEach(c -> System.out.println(c.loss()));
    System.out.println(
        all.stream().filter(HourByHour.Compared::same).count()
            + " of "
            + homes
            + " homes have the same best package, of "
            + all.stream().mapToInt(HourByHour.Compared::packages).sum()
            + " packages");
  }
}
