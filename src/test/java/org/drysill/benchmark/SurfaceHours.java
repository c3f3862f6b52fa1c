package org.drysill.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.mould.MouldSensitivity;
import org.drysill.physics.surface.HourlyAir;
import org.drysill.physics.surface.MouldYear;
import org.drysill.physics.surface.PaneYear;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.weather.SyntheticYear;

/**
 * A year of hours for one home: the hours made from months, then half of its places walls with
 * their mould index and half panes with their water, beside a floor that only takes the saturation
 * pressure of every surface and hour. DEVELOPERS.md has the command.
 */
public final class SurfaceHours {
  private static final int ROUNDS = 60;

  private SurfaceHours() {}

  public static void main(String[] arguments) {
    System.out.printf(
        Locale.ROOT, "%8s %12s %12s %12s%n", "places", "year, ms", "floor, ms", "per place");
    for (int places : new int[] {3, 6, 12, 24, 48}) {
      List<Double> year = new ArrayList<>();
      List<Double> floor = new ArrayList<>();
      for (int round = 0; round < ROUNDS; round++) {
        long start = System.nanoTime();
        double used = year(places);
        long between = System.nanoTime();
        used += floor(places);
        long end = System.nanoTime();
        year.add((between - start) / 1e6 + (Double.isNaN(used) ? 1 : 0));
        floor.add((end - between) / 1e6);
      }
      System.out.printf(
          Locale.ROOT,
          "%8d %12.1f %12.1f %12.2f%n",
          places,
          median(year),
          median(floor),
          median(year) / places);
    }
  }

  private static double median(List<Double> times) {
    List<Double> warm = times.subList(ROUNDS / 2, ROUNDS).stream().sorted().toList();
    return warm.get(warm.size() / 2);
  }

  private static double year(int places) {
    HourlyAir air = air(outdoors());
    MouldYear.Surface wall =
        new MouldYear.Surface(MouldSensitivity.SENSITIVE, 0.1, 0.8, HourlyYear.firstHour(6));
    PaneYear.Pane pane = new PaneYear.Pane(3, 0.005, 0.1, 7, HourlyYear.firstHour(6));
    double sum = 0;
    for (int p = 0; p < places; p++) {
      double factor = 0.4 + 0.4 * p / places;
      sum +=
          p % 2 == 0
              ? MouldYear.of(factor, air, wall).peak()
              : PaneYear.of(factor, air, pane).settledKgM2();
    }
    return sum;
  }

  private static HourlyYear outdoors() {
    double[] celsius = {4.3, 4.8, 6.6, 9.0, 11.8, 14.8, 16.6, 16.5, 14.0, 10.5, 7.1, 4.2};
    double[] vapour = Arrays.stream(celsius).map(t -> MoistAir.vapourPressurePa(t, 0.82)).toArray();
    return new SyntheticYear(2.7, 4.7, 3.3, 2.3, 0.7, 1).of(celsius, vapour, 6);
  }

  private static HourlyAir air(HourlyYear outdoors) {
    double[] indoor = new double[HourlyYear.HOURS];
    double[] vapour = new double[HourlyYear.HOURS];
    double[] outdoor = new double[HourlyYear.HOURS];
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      outdoor[h] = outdoors.celsius(h);
      indoor[h] = Math.max(19, outdoor[h] + 2);
      vapour[h] = outdoors.vapourPa(h) + Math.max(0, 800 - 40 * outdoor[h]);
    }
    return new HourlyAir(indoor, vapour, outdoor);
  }

  private static double floor(int places) {
    double sum = 0;
    for (int p = 0; p < places; p++) {
      for (int h = 0; h < HourlyYear.HOURS; h++) {
        double celsius = 5 + 0.001 * (h % 9000) + 0.1 * p;
        sum += 610.5 * Math.exp(17.269 * celsius / (237.3 + celsius));
      }
    }
    return sum;
  }
}
