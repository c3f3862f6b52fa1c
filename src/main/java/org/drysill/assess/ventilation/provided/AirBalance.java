package org.drysill.assess.ventilation.provided;

/**
 * Air into and out of the home, time-averaged, at one density.
 *
 * @param supply in by fans [m³/s]
 * @param infiltration in by leaks and ventilators [m³/s]
 * @param extract out by fans [m³/s]
 * @param exfiltration out by leaks and ventilators [m³/s]
 */
public record AirBalance(double supply, double infiltration, double extract, double exfiltration) {
  /** All air that comes in [m³/s]. */
  public double in() {
    return supply + infiltration;
  }

  /** All air that goes out [m³/s]. */
  public double out() {
    return extract + exfiltration;
  }

  /** What does not close [m³/s]; 0 but for rounding. */
  public double residual() {
    return in() - out();
  }
}
