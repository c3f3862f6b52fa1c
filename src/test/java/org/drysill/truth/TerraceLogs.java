package org.drysill.truth;

import static org.drysill.truth.RoomTruth.between;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * Makes up the logs of the terrace among the example surveys: outdoors, a bathroom and a bedroom, a
 * month every ten minutes. The same seed makes the same files:
 *
 * <pre>java -cp target/classes:target/test-classes org.drysill.truth.TerraceLogs
 * example-surveys/1930s-terrace/logs</pre>
 *
 * <p>Each room is air and fabric as in {@link RoomAir}, fed with showers, cooking, sleepers and
 * washing by a weekly routine, opened windows now and then. What the surveyor read during the visit
 * is true of the logs too: the last day is bent towards those readings, the more the nearer.
 */
public final class TerraceLogs {
  private static final LocalDateTime START = LocalDateTime.of(2025, 12, 22, 12, 0);
  private static final LocalDateTime END = LocalDateTime.of(2026, 1, 22, 12, 0);
  private static final int DAY = 24 * 60;
  private static final int STEP = 10;
  private static final double BEND_MINUTES = 300;
  private static final double PERSON_PPM_M3_H = 3.9e-6 * 3600e6;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final int minutes = (int) Duration.between(START, END).toMinutes();
  private final Random dice = RoomTruth.dice(1931, 7);
  private final double[] outdoorC = new double[minutes + 1];
  private final double[] outdoorRh = new double[minutes + 1];

  private TerraceLogs() {
    weather();
    bend(outdoorC, LocalDateTime.of(2026, 1, 22, 9, 40), 3.2);
    bend(outdoorC, LocalDateTime.of(2026, 1, 22, 11, 50), 3.9, BEND_MINUTES / 5);
    bend(outdoorRh, LocalDateTime.of(2026, 1, 22, 9, 40), 88);
    bend(outdoorRh, LocalDateTime.of(2026, 1, 22, 11, 50), 85, BEND_MINUTES / 5);
  }

  /** Writes the three files into the folder that is named. */
  public static void main(String[] arguments) throws IOException {
    TerraceLogs logs = new TerraceLogs();
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Files.writeString(folder.resolve("outdoors.csv"), logs.outdoors());
    Files.writeString(folder.resolve("bathroom.csv"), logs.bathroom());
    Files.writeString(folder.resolve("bedroom-front.csv"), logs.bedroom());
  }

  /** Days that remember the day before, and the sun. */
  private void weather() {
    double front = -1;
    double damp = 0;
    for (int m = 0; m <= minutes; m++) {
      front = front * (1 - 1.0 / 3600) + dice.nextGaussian() * Math.sqrt(2.0 / 3600);
      damp = damp * (1 - 1.0 / 1500) + dice.nextGaussian() * Math.sqrt(2.0 / 1500);
      double sun = Math.cos(2 * Math.PI * (clock(m) - 14 * 60) / DAY);
      outdoorC[m] = 4.4 + 2.6 * front + 1.5 * sun;
      outdoorRh[m] = Math.max(55, Math.min(98, 86 - 5 * sun + 4 * damp));
    }
  }

  private String outdoors() {
    return csv(false, outdoorC, outdoorRh, null, List.of(), -1);
  }

  private String bathroom() {
    double[] celsius = new double[minutes + 1];
    double[] water = new double[minutes + 1];
    double[] airChange = filled(0.75);
    for (int m = 0; m <= minutes; m++) {
      celsius[m] = 18.6 + heating(m) + 0.08 * (outdoorC[m] - 4.4);
      water[m] = 14;
    }
    for (int day = 0; day <= minutes / DAY; day++) {
      shower(day, between(dice, 6.4, 6.9), celsius, water, airChange);
      shower(day, between(dice, 7.2, 7.6), celsius, water, airChange);
      if (dice.nextDouble() < 0.6) {
        shower(day, between(dice, 20.5, 21.5), celsius, water, airChange);
      }
      // The kitchen's steam rises up the stairs.
      add(water, at(day, between(dice, 17.6, 18.8)), 35 + dice.nextInt(20), between(dice, 25, 45));
      if (dice.nextDouble() < 0.15) {
        airing(day, between(dice, 9, 11), celsius, airChange);
      }
    }
    double[] humidity = humidity(celsius, water, airChange, 7.2, 2.5, 9);
    bend(celsius, LocalDateTime.of(2026, 1, 22, 11, 20), 18.9);
    bend(humidity, LocalDateTime.of(2026, 1, 22, 11, 20), 70);
    LocalDateTime emptied = LocalDateTime.of(2026, 1, 6, 9, 0);
    return csv(false, celsius, humidity, null, List.of(emptied, emptied.plusHours(7)), -1);
  }

  private String bedroom() {
    double[] celsius = new double[minutes + 1];
    double[] water = new double[minutes + 1];
    double[] sleepers = new double[minutes + 1];
    double[] airChange = filled(0.42);
    for (int m = 0; m <= minutes; m++) {
      celsius[m] = 16.9 + 0.8 * heating(m) + 0.12 * (outdoorC[m] - 4.4);
      water[m] = 22;
    }
    for (int day = -1; day <= minutes / DAY; day++) {
      double calm = Math.exp(0.12 * dice.nextGaussian());
      scale(airChange, at(day, 12), DAY, calm);
      boolean late = (day + 1) % 7 >= 5 || day == minutes / DAY;
      int bed = at(day, between(dice, 22.3, 23.2));
      int up = at(day + 1, late ? between(dice, 8.6, 9.2) : between(dice, 6.9, 7.3));
      add(sleepers, bed, up - bed, 1);
      add(sleepers, bed + dice.nextInt(40), up - bed + dice.nextInt(20) - 20, 1);
      if (dice.nextDouble() < 0.2) {
        add(sleepers, at(day, between(dice, 14, 17)), 30 + dice.nextInt(60), 1);
      }
      if (dice.nextDouble() < 0.25) {
        airing(day, between(dice, 9.5, 10.5), celsius, airChange);
      }
      if (dice.nextDouble() < 0.3) {
        add(water, at(day, between(dice, 10, 12)), 480, 45);
      }
    }
    for (int m = 0; m <= minutes; m++) {
      water[m] += 38 * sleepers[m];
    }
    double[] humidity = humidity(celsius, water, airChange, 33.6, 4, 9);
    double[] ppm = ppm(sleepers, airChange, 33.6);
    LocalDateTime visit = LocalDateTime.of(2026, 1, 22, 10, 50);
    bend(celsius, visit, 17.2);
    bend(humidity, visit, 68);
    bend(ppm, visit, 1480);
    int handled = (int) Duration.between(START, LocalDateTime.of(2026, 1, 11, 15, 20)).toMinutes();
    return csv(true, celsius, humidity, ppm, List.of(), handled);
  }

  /** On from six to eight and from five to ten, with a lag. */
  private double heating(int minute) {
    double hour = clock(minute) / 60.0;
    double morning = Math.exp(-Math.pow((hour - 8) / 1.6, 2));
    double evening = Math.exp(-Math.pow((hour - 20.5) / 2.4, 2));
    return 1.1 * morning + 1.5 * evening - 0.5;
  }

  private void shower(int day, double hour, double[] celsius, double[] water, double[] airChange) {
    int from = at(day, hour);
    int length = 7 + dice.nextInt(7);
    add(water, from, length, between(dice, 300, 520));
    add(celsius, from, length + 10, 0.7);
    add(airChange, from, length + 12, 2);
  }

  /** A window wide open: the air is changed at once, the walls are not. */
  private void airing(int day, double hour, double[] celsius, double[] airChange) {
    int from = at(day, hour);
    int length = 12 + dice.nextInt(10);
    add(airChange, from, length, between(dice, 5, 9));
    for (int i = 0; i < 90; i++) {
      double share = i < length ? 1 - Math.exp(-i / 5.0) : Math.exp(-(i - length) / 18.0);
      add(celsius, from + i, 1, -4 * share);
    }
  }

  private double[] humidity(
      double[] celsius,
      double[] waterGH,
      double[] airChange,
      double volume,
      double uptake,
      double m) {
    double[] percent = new double[celsius.length];
    double v = saturated(celsius[0]) * 0.6;
    double w = v;
    for (int i = 0; i < celsius.length; i++) {
      double outdoor = saturated(outdoorC[i]) * outdoorRh[i] / 100;
      double taken = uptake * (v - w);
      v += (airChange[i] * (outdoor - v) - taken + waterGH[i] / volume) / 60;
      w += taken / (m - 1) / 60;
      v = Math.min(v, 0.97 * saturated(celsius[i]));
      percent[i] = 100 * v / saturated(celsius[i]);
    }
    return percent;
  }

  private double[] ppm(double[] people, double[] airChange, double volume) {
    double[] ppm = new double[people.length];
    double c = 900;
    for (int i = 0; i < people.length; i++) {
      c += (airChange[i] * (428 - c) + people[i] * PERSON_PPM_M3_H / volume) / 60;
      ppm[i] = c;
    }
    return ppm;
  }

  private static double saturated(double celsius) {
    return 1000
        * Iso13788Vapour.saturationPressureOverWaterPa(celsius)
        / (461.5 * (celsius + 273.15));
  }

  private void bend(double[] values, LocalDateTime at, double read) {
    bend(values, at, read, BEND_MINUTES);
  }

  private void bend(double[] values, LocalDateTime at, double read, double width) {
    int minute = (int) Duration.between(START, at).toMinutes();
    double off = read - values[minute];
    for (int i = 0; i < values.length; i++) {
      double away = i - minute;
      values[i] += off * Math.exp(-Math.pow(away / width, 2));
    }
  }

  private String csv(
      boolean withCo2,
      double[] celsius,
      double[] percent,
      double[] ppm,
      List<LocalDateTime> gap,
      int spike) {
    StringBuilder csv = new StringBuilder("Time,Temperature (C),Humidity (%)");
    csv.append(withCo2 ? ",CO2 (ppm)\n" : "\n");
    for (int m = 0; m <= minutes; m += STEP) {
      LocalDateTime at = START.plusMinutes(m);
      boolean lost = !gap.isEmpty() && at.isAfter(gap.get(0)) && at.isBefore(gap.get(1));
      if (!lost) {
        double shown = m == spike ? 41.3 : celsius[m] + 0.04 * dice.nextGaussian();
        double humid = Math.min(99, percent[m] + 0.25 * dice.nextGaussian());
        csv.append(String.format(Locale.ROOT, "%s,%.1f,%.1f", TIME.format(at), shown, humid));
        if (withCo2) {
          csv.append(String.format(Locale.ROOT, ",%.0f", ppm[m] + 8 * dice.nextGaussian()));
        }
        csv.append('\n');
      }
    }
    return csv.toString();
  }

  private static int clock(int minute) {
    return (minute + 12 * 60) % DAY;
  }

  /** The minute of an hour of a day; day 0 is that of the start. */
  private static int at(int day, double hour) {
    return (int) (day * DAY + 60 * hour) - 12 * 60;
  }

  private double[] filled(double value) {
    double[] values = new double[minutes + 1];
    Arrays.fill(values, value);
    return values;
  }

  private static void add(double[] values, int from, int length, double amount) {
    for (int i = Math.max(0, from); i < Math.min(values.length, from + length); i++) {
      values[i] += amount;
    }
  }

  private static void scale(double[] values, int from, int length, double factor) {
    for (int i = Math.max(0, from); i < Math.min(values.length, from + length); i++) {
      values[i] *= factor;
    }
  }
}
