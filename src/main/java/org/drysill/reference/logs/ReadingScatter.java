package org.drysill.reference.logs;

import org.drysill.physics.tracer.ReadingErrors;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * Scatter of single readings of loggers, standard deviations.
 *
 * @param co2 of CO₂ [ppm]
 * @param vapour of vapour content [kg/m³]
 * @param vapourLevel of the level to which vapour falls [kg/m³]
 */
public record ReadingScatter(
    @Key(about = "Of CO2, ppm") Sourced co2,
    @Key(about = "Of vapour content, kg/m3") Sourced vapour,
    @Key(about = "Of the level to which vapour falls, kg/m3") Sourced vapourLevel) {
  /**
   * The errors of a log of CO₂ [ppm].
   *
   * @param background standard uncertainty of the background, offset of the sensor included [ppm]
   */
  public ReadingErrors ofCo2(double background) {
    return new ReadingErrors(co2.likely(), background);
  }

  /** The errors of a log of vapour [kg/m³]. */
  public ReadingErrors ofVapour() {
    return new ReadingErrors(vapour.likely(), vapourLevel.likely());
  }
}
