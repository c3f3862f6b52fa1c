package org.drysill.physics.weather;

import java.util.Random;
import org.drysill.physics.Bounds;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * A year of hours made from the means of twelve months. Derived; it is no weather that was, and
 * says so wherever it is used.
 *
 * <pre>
 * T(h)  = M(h) + D(h) + W(h)
 * D     = −a(h)·cos(2π·(hour − 3)/24), the coldest at three and the warmest at fifteen hours
 * W     = day-to-day departure, W(d) = ρ·W(d−1) + σ(d)·√(1 − ρ²)·ε, straight between noons
 * pv(h) = min(ps(T(h)) ; c(m) + B(h))
 * </pre>
 *
 * <p>M and B are lines through the months that, with the rest, keep the mean of each month; a and σ
 * run from their winter to their summer value with a yearly cosine; ε is normal, of a fixed seed.
 * c(m) is found so that the mean vapour pressure of the month is kept although none exceeds
 * saturation. Means of temperature are kept to 10⁻⁹ K, of vapour pressure to 10⁻⁶ Pa.
 *
 * @param winterSwing half of the daily range in January [K]
 * @param summerSwing half of the daily range in July [K]
 * @param winterSpread standard deviation of daily means about the month's course in January [K]
 * @param summerSpread the same in July [K]
 * @param persistence ρ, correlation of one day's departure with the next, 0 to below 1
 * @param seed of the departures: the same seed, the same year
 */
public record SyntheticYear(
    double winterSwing,
    double summerSwing,
    double winterSpread,
    double summerSpread,
    double persistence,
    long seed) {
  private static final int HOURS_PER_DAY = 24;
  private static final int DAYS = HourlyYear.HOURS / HOURS_PER_DAY;
  private static final int MONTHS = 12;
  private static final double COLDEST_HOUR = 3;
  private static final int HALVINGS = 70;

  /** Refuses negative swings and a departure that never ends. */
  public SyntheticYear {
    Bounds.atLeast("winter swing [K]", winterSwing, 0);
    Bounds.atLeast("summer swing [K]", summerSwing, 0);
    Bounds.atLeast("winter spread [K]", winterSpread, 0);
    Bounds.atLeast("summer spread [K]", summerSpread, 0);
    Bounds.inside("persistence", persistence, 0, 0.99);
  }

  /**
   * Makes the year.
   *
   * @param celsius twelve monthly means of temperature [°C]
   * @param vapourPa twelve monthly means of vapour pressure [Pa]; one above saturation at the
   *     month's mean temperature counts as that
   * @param warmestMonth the middle of summer, 0 for January: 6 in the north, 0 in the south
   */
  public HourlyYear of(double[] celsius, double[] vapourPa, int warmestMonth) {
    Bounds.inside("months of temperature", celsius.length, MONTHS, MONTHS);
    Bounds.inside("months of vapour pressure", vapourPa.length, MONTHS, MONTHS);
    double[] temperature = throughMonths(celsius, departures(warmestMonth));
    double[] vapour = throughMonths(vapourPa, new double[HourlyYear.HOURS]);
    return new HourlyYear(temperature, capped(temperature, vapour, vapourPa));
  }

  private double[] departures(int warmestMonth) {
    double[] days = days(warmestMonth);
    double[] hours = new double[HourlyYear.HOURS];
    for (int h = 0; h < hours.length; h++) {
      double swing = winterSwing + (summerSwing - winterSwing) * summer(h, warmestMonth);
      double clock = h % HOURS_PER_DAY + 0.5;
      hours[h] =
          between(days, h) - swing * Math.cos(2 * Math.PI * (clock - COLDEST_HOUR) / HOURS_PER_DAY);
    }
    return hours;
  }

  /** 0 in the middle of winter, 1 in that of summer. */
  private static double summer(int hour, int warmestMonth) {
    double month = (double) hour / HourlyYear.HOURS * MONTHS - 0.5;
    return (1 + Math.cos(2 * Math.PI * (month - warmestMonth) / MONTHS)) / 2;
  }

  private double[] days(int warmestMonth) {
    Random random = new Random(seed);
    double[] days = new double[DAYS];
    double fresh = Math.sqrt(1 - persistence * persistence);
    double unit = random.nextGaussian();
    for (int d = 0; d < DAYS; d++) {
      unit = persistence * unit + fresh * random.nextGaussian();
      double summer = summer(d * HOURS_PER_DAY, warmestMonth);
      days[d] = unit * (winterSpread + (summerSpread - winterSpread) * summer);
    }
    return days;
  }

  /** Straight between the noons of neighbouring days; December goes over into January. */
  private static double between(double[] days, int hour) {
    double day = (hour + 0.5) / HOURS_PER_DAY - 0.5;
    int before = (int) Math.floor(day);
    double share = day - before;
    return (1 - share) * days[Math.floorMod(before, DAYS)]
        + share * days[Math.floorMod(before + 1, DAYS)];
  }

  /** The departures on a course through the months that keeps their means. */
  private static double[] throughMonths(double[] means, double[] departures) {
    double[] missing = HourlyYear.monthlyMeans(departures);
    for (int m = 0; m < MONTHS; m++) {
      missing[m] = means[m] - missing[m];
    }
    double[] nodes = MonthCourse.nodes(missing);
    double[] hourly = departures.clone();
    for (int h = 0; h < hourly.length; h++) {
      hourly[h] += MonthCourse.at(nodes, h);
    }
    return hourly;
  }

  private static double[] capped(double[] celsius, double[] course, double[] means) {
    double[] saturation = new double[celsius.length];
    for (int h = 0; h < saturation.length; h++) {
      saturation[h] = Iso13788Vapour.saturationPressurePa(celsius[h]);
    }
    double[] most = HourlyYear.monthlyMeans(saturation);
    double[] shift = new double[MONTHS];
    for (int m = 0; m < MONTHS; m++) {
      shift[m] = shift(m, Math.min(means[m], most[m]), course, saturation);
    }
    double[] capped = new double[celsius.length];
    for (int h = 0; h < capped.length; h++) {
      capped[h] = at(h, shift[HourlyYear.month(h)], course, saturation);
    }
    return capped;
  }

  /** The shift of a month that gives it its mean; by halving, for the mean rises with it. */
  private static double shift(int month, double mean, double[] course, double[] saturation) {
    double low = -2 * mean - 5000;
    double high = 50_000;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (mean(month, middle, course, saturation) < mean) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static double mean(int month, double shift, double[] course, double[] saturation) {
    double sum = 0;
    for (int h = HourlyYear.firstHour(month); h < HourlyYear.firstHour(month + 1); h++) {
      sum += at(h, shift, course, saturation);
    }
    return sum / (HourlyYear.firstHour(month + 1) - HourlyYear.firstHour(month));
  }

  private static double at(int hour, double shift, double[] course, double[] saturation) {
    return Math.max(0, Math.min(saturation[hour], course[hour] + shift));
  }
}
