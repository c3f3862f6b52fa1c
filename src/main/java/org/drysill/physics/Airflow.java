package org.drysill.physics;

/**
 * A volume flow of air.
 *
 * @param m3PerSecond the flow [m³/s], at least 0
 */
public record Airflow(double m3PerSecond) implements Comparable<Airflow> {
  private static final double LITRES_PER_M3 = 1000;
  private static final double SECONDS_PER_HOUR = 3600;

  /** One cubic foot [m³]; exact, the foot being 0.3048 m. */
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  /** Refuses negative flows, infinities and NaN. */
  public Airflow {
    Bounds.atLeast("air flow [m³/s]", m3PerSecond, 0);
  }

  /** A flow in m³/s. */
  public static Airflow m3PerSecond(double m3PerSecond) {
    return new Airflow(m3PerSecond);
  }

  /** A flow in l/s. */
  public static Airflow litresPerSecond(double litresPerSecond) {
    return new Airflow(litresPerSecond / LITRES_PER_M3);
  }

  /** A flow in m³/h. */
  public static Airflow m3PerHour(double m3PerHour) {
    return new Airflow(m3PerHour / SECONDS_PER_HOUR);
  }

  /** A flow in cubic feet per minute. */
  public static Airflow cubicFeetPerMinute(double cfm) {
    return new Airflow(cfm * CUBIC_FOOT_M3 / 60);
  }

  /** The flow that changes the air of a volume [m³] a number of times an hour [1/h]. */
  public static Airflow ofAirChange(double perHour, double volumeM3) {
    return m3PerHour(perHour * Bounds.above("volume [m³]", volumeM3, 0));
  }

  /** This in l/s. */
  public double litresPerSecond() {
    return m3PerSecond * LITRES_PER_M3;
  }

  /** This in m³/h. */
  public double m3PerHour() {
    return m3PerSecond * SECONDS_PER_HOUR;
  }

  /** This in cubic feet per minute. */
  public double cubicFeetPerMinute() {
    return m3PerSecond * 60 / CUBIC_FOOT_M3;
  }

  /** How often an hour this changes the air of a volume [m³]: n = q / V [1/h]. */
  public double airChangePerHour(double volumeM3) {
    return m3PerHour() / Bounds.above("volume [m³]", volumeM3, 0);
  }

  /** The sum of two flows. */
  public Airflow plus(Airflow other) {
    return new Airflow(m3PerSecond + other.m3PerSecond);
  }

  @Override
  public int compareTo(Airflow other) {
    return Double.compare(m3PerSecond, other.m3PerSecond);
  }
}
