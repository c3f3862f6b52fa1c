package org.drysill.assess.logs;

import java.util.Arrays;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.MoistAir;
import org.drysill.survey.log.LoggedSeries;

/** Outdoor air on the steps of a room's log; NaN where it is unknown. */
final class OutdoorSteps {
  private final double[] celsius;
  private final double[] pressurePa;
  private final double[] contentKgM3;
  private final double[] ppm;

  private OutdoorSteps(double[] celsius, double[] pressurePa, double[] contentKgM3, double[] ppm) {
    this.celsius = celsius;
    this.pressurePa = pressurePa;
    this.contentKgM3 = contentKgM3;
    this.ppm = ppm;
  }

  /** As it was logged. */
  static OutdoorSteps of(LoggedSeries log, Grid grid) {
    return new OutdoorSteps(
        Resampled.of(log, log.temperature(), grid).means(),
        Resampled.of(log, log.vapourPressure(), grid).means(),
        Resampled.of(log, log.vapourContent(), grid).means(),
        Resampled.of(log, log.co2(), grid).means());
  }

  /** Nothing is known yet. */
  static OutdoorSteps unknown(Grid grid) {
    return new OutdoorSteps(nan(grid), nan(grid), nan(grid), nan(grid));
  }

  private static double[] nan(Grid grid) {
    double[] values = new double[grid.size()];
    Arrays.fill(values, Double.NaN);
    return values;
  }

  /** Sets the air of a step: temperature [°C] and relative humidity [ratio]. */
  void put(int step, double temperature, double humidity) {
    double pressure =
        MoistAir.vapourPressurePa(temperature, humidity, HumidityReference.OVER_WATER);
    celsius[step] = temperature;
    pressurePa[step] = pressure;
    contentKgM3[step] = MoistAir.vapourContentKgM3(temperature, pressure);
  }

  /** Temperature [°C]. */
  double celsius(int step) {
    return celsius[step];
  }

  /** Vapour pressure [Pa]. */
  double pressurePa(int step) {
    return pressurePa[step];
  }

  /** Vapour content [kg/m³]. */
  double contentKgM3(int step) {
    return contentKgM3[step];
  }

  /** CO₂ [ppm]. */
  double ppm(int step) {
    return ppm[step];
  }
}
