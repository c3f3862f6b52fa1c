package org.drysill.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.AirRoutes;
import org.drysill.physics.zones.HourlyZones;
import org.drysill.physics.zones.ZoneFlows;
import org.drysill.physics.zones.ZoneSteps;

/**
 * How far a morning reading stands from the mean of days: homes hour by hour, with furniture and
 * plaster as stores, cooking, washing and sleep by the clock, and outdoor air that changes from day
 * to day. Prints the standard deviations of what all rooms have in common at ten in the morning and
 * of each room by itself, as shares of the vapour excess; they stand behind two planning values of
 * {@code defaults/model.yaml}.
 *
 * <pre>java -cp target/classes:target/test-classes org.drysill.benchmark.MomentExperiment</pre>
 */
final class MomentExperiment {
  private static final int HOMES = 100;
  private static final int ROOMS = 6;
  private static final int WINTER_DAYS = 59;

  /** Parts of a room's water by hour: hall, kitchen, bathroom, living room, two bedrooms. */
  private static final int[][] HOURS = {
    {7, 17}, {7, 12, 18, 19}, {7, 8, 22}, {17, 18, 19, 20, 21}, {23, 0, 2, 4, 6}, {22, 0, 2, 4, 6}
  };

  private static final double[] DAILY_KG = {0.2, 3, 1.5, 1.5, 0.8, 0.8};
  private static final double[] VOLUMES = {20, 28, 12, 45, 34, 26};

  private MomentExperiment() {}

  public static void main(String[] arguments) {
    double common = 0;
    double own = 0;
    for (int home = 0; home < HOMES; home++) {
      double[][] logs = mornings(new Random(home));
      common += variance(means(logs)) / HOMES;
      own += ownVariance(logs) / HOMES;
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "at ten in the morning: in common %.0f %%, of each room %.0f %%",
            100 * Math.sqrt(common),
            100 * Math.sqrt(own)));
  }

  /** Logarithm of the excess of each morning by its mean over winter, by room and day. */
  private static double[][] mornings(Random random) {
    double[] outdoors = outdoors(random);
    HourlyZones year = HourlyZones.run(steps(random), new Drive(outdoors, random));
    double[][] logs = new double[ROOMS][WINTER_DAYS];
    for (int i = 0; i < ROOMS; i++) {
      double mean = 0;
      for (int h = 0; h < WINTER_DAYS * 24; h++) {
        mean += (year.content(i, h) - outdoors[h]) / (WINTER_DAYS * 24);
      }
      for (int day = 0; day < WINTER_DAYS; day++) {
        int ten = day * 24 + 10;
        // Mornings drier than outdoors have no logarithm; the model is silent on such days, too.
        double excess = Math.max(0.1 * mean, year.content(i, ten) - outdoors[ten]);
        logs[i][day] = Math.log(excess / mean);
      }
    }
    return logs;
  }

  private static ZoneSteps steps(Random random) {
    double all = 0;
    for (double volume : VOLUMES) {
      all += volume;
    }
    double[] shares = new double[ROOMS];
    double[] stores = new double[ROOMS];
    double multiplier = 5 + 10 * random.nextDouble();
    for (int i = 0; i < ROOMS; i++) {
      shares[i] = VOLUMES[i] / all;
      stores[i] = VOLUMES[i] * multiplier;
    }
    List<AirRoutes.Door> doors = new ArrayList<>();
    double[] exchange = new double[ROOMS - 1];
    for (int i = 1; i < ROOMS; i++) {
      doors.add(new AirRoutes.Door(0, i, 1));
      exchange[i - 1] = 0.01 * Math.exp(0.7 * random.nextGaussian());
    }
    double air = 0.025 * Math.exp(0.3 * random.nextGaussian());
    ZoneFlows flows =
        new AirRoutes(shares, shares, doors)
            .flows(new double[ROOMS], new double[ROOMS], air, exchange);
    return new ZoneSteps(List.of(flows), stores, List.of(), 3600);
  }

  /** About 5.5 g/m³ in winter, from day to day by 20 %, one day like the day before by 0.7. */
  private static double[] outdoors(Random random) {
    double[] hours = new double[HourlyYear.HOURS];
    double departure = 0;
    for (int day = 0; day < HourlyYear.HOURS / 24; day++) {
      double next = 0.7 * departure + Math.sqrt(1 - 0.49) * 0.2 * random.nextGaussian();
      for (int h = 0; h < 24; h++) {
        hours[day * 24 + h] = 0.0055 * Math.exp(departure + (next - departure) * h / 24);
      }
      departure = next;
    }
    return hours;
  }

  private static final class Drive implements HourlyZones.Drive {
    private final double[] outdoors;
    private final double[] ofDay;

    Drive(double[] outdoors, Random random) {
      this.outdoors = outdoors;
      ofDay = new double[HourlyYear.HOURS / 24];
      for (int day = 0; day < ofDay.length; day++) {
        ofDay[day] = Math.exp(0.3 * random.nextGaussian());
      }
    }

    @Override
    public int state(int hour) {
      return 0;
    }

    @Override
    public double outdoor(int hour) {
      return outdoors[hour];
    }

    @Override
    public void production(int hour, double[] zones) {
      for (int i = 0; i < ROOMS; i++) {
        zones[i] = 0;
        for (int at : HOURS[i]) {
          if (at == hour % 24) {
            zones[i] = ofDay[hour / 24] * DAILY_KG[i] / HOURS[i].length / 3600;
          }
        }
      }
    }

    @Override
    public void saturation(int hour, double[] panes) {
      // No panes.
    }
  }

  private static double[] means(double[][] logs) {
    double[] means = new double[WINTER_DAYS];
    for (double[] room : logs) {
      for (int day = 0; day < WINTER_DAYS; day++) {
        means[day] += room[day] / ROOMS;
      }
    }
    return means;
  }

  /** Mean square of what differs from the common part: rooms may be biased at that hour, too. */
  private static double ownVariance(double[][] logs) {
    double[] means = means(logs);
    double sum = 0;
    for (double[] room : logs) {
      for (int day = 0; day < WINTER_DAYS; day++) {
        sum += Math.pow(room[day] - means[day], 2);
      }
    }
    return sum / (ROOMS * WINTER_DAYS);
  }

  private static double variance(double[] values) {
    double square = 0;
    for (double value : values) {
      square += value * value / values.length;
    }
    return square;
  }
}
