package org.drysill.truth;

import static org.drysill.truth.RoomTruth.between;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.tracer.ReadingErrors;
import org.drysill.physics.tracer.TracerSeries;

/**
 * What inexpensive loggers make of a made-up room: irregular steps, lost readings and hours, noise,
 * offsets, resolution. The CO₂ sensor may be off by 50 ppm, the hygrometers by 2 % RH and 0.3 K.
 */
public final class RoomLog {
  /** What the reader of the log believes of outdoor air, whatever it is [ppm]. */
  public static final double BELIEVED_OUTDOOR_PPM = 425;

  /** Noise and resolution of 1 ppm; offset up to 50 ppm and outdoor air up to 35 off, evenly. */
  public static final ReadingErrors CO2_ERRORS =
      new ReadingErrors(15, Math.hypot(50, 35) / Math.sqrt(3));

  /** Noise and resolution of 1 % RH and 0.1 K at both places; drift of the level within a day. */
  public static final ReadingErrors VAPOUR_ERRORS = new ReadingErrors(0.12, 0.3);

  private static final int[] STEPS = {1, 2, 5, 10};

  private final RoomAir air;
  private final Random dice;
  private final int[] minutes;

  private RoomLog(RoomTruth truth, int days) {
    this.air = new RoomAir(truth, days);
    this.dice = RoomTruth.dice(truth.seed(), 3);
    this.minutes = when(days);
  }

  /** Both series of a room. */
  public record Both(TracerSeries co2, TracerSeries vapour) {}

  /** Logs a room. */
  public static Both of(RoomTruth truth, int days) {
    RoomLog log = new RoomLog(truth, days);
    return new Both(log.co2(), log.vapour());
  }

  private int[] when(int days) {
    int step = STEPS[dice.nextInt(STEPS.length)];
    int outages = dice.nextInt(4);
    boolean[] lost = new boolean[air.life.minutes];
    for (int i = 0; i < outages; i++) {
      int from = dice.nextInt(days * RoomLife.DAY);
      int to = Math.min(lost.length, from + 60 + dice.nextInt(480));
      Arrays.fill(lost, from, to, true);
    }
    return IntStream.iterate(0, m -> m < lost.length, m -> m + step + dice.nextInt(1 + step / 4))
        .filter(m -> !lost[m] && dice.nextDouble() > 0.01)
        .toArray();
  }

  private TracerSeries co2() {
    double offset = between(dice, -50, 50);
    double noise = between(dice, 5, 15);
    double[] excess = new double[minutes.length];
    double[] background = new double[minutes.length];
    for (int i = 0; i < minutes.length; i++) {
      double read = Math.rint(air.ppm[minutes[i]] + offset + noise * dice.nextGaussian());
      background[i] = BELIEVED_OUTDOOR_PPM;
      excess[i] = read - BELIEVED_OUTDOOR_PPM;
    }
    return series(excess, background);
  }

  private TracerSeries vapour() {
    Hygrometer inside = new Hygrometer(dice);
    Hygrometer outside = new Hygrometer(dice);
    double[] excess = new double[minutes.length];
    double[] background = new double[minutes.length];
    for (int i = 0; i < minutes.length; i++) {
      int m = minutes[i];
      background[i] = outside.read(air.life.outdoorCelsius[m], air.life.outdoorGM3[m]);
      excess[i] = inside.read(air.life.indoorCelsius[m], air.gM3[m]) - background[i];
    }
    return series(excess, background);
  }

  private TracerSeries series(double[] excess, double[] background) {
    double[] hours = IntStream.of(minutes).mapToDouble(m -> m / 60.0).toArray();
    double[] ones = IntStream.of(minutes).mapToDouble(m -> 1).toArray();
    return TracerSeries.of(hours, excess, background, ones);
  }

  /** A hygrometer with offsets that stay and noise that does not. */
  private static final class Hygrometer {
    private final Random dice;
    private final double kelvinOff;
    private final double percentOff;

    Hygrometer(Random dice) {
      this.dice = dice;
      this.kelvinOff = between(dice, -0.3, 0.3);
      this.percentOff = between(dice, -2, 2);
    }

    /** The vapour content [g/m³] that it shows: 0.1 K and 1 % RH are its smallest steps. */
    double read(double celsius, double gM3) {
      double percent = 100 * gM3 / saturated(celsius);
      double shownT = Math.rint(10 * (celsius + kelvinOff + 0.05 * dice.nextGaussian())) / 10;
      double shownRh = Math.min(100, Math.rint(percent + percentOff + 0.3 * dice.nextGaussian()));
      return shownRh / 100 * saturated(shownT);
    }

    private static double saturated(double celsius) {
      return 1000
          * Iso13788Vapour.saturationPressureOverWaterPa(celsius)
          / (461.5 * (celsius + 273.15));
    }
  }
}
