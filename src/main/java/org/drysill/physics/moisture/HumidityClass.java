package org.drysill.physics.moisture;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.physics.Bounds;

/**
 * Internal humidity classes by ISO 13788:2012, Annex A.2, Figure A.2 (memory): the monthly mean
 * excess of indoor over outdoor vapour, by the monthly mean outdoor temperature Te [°C].
 *
 * <pre>
 * limit(Te) = limit(0) · min(1, max(0, (20 − Te) / 20))
 * limit(0) = 270, 540, 810, 1080 Pa, or 2, 4, 6, 8 g/m³, for classes 1 to 4
 * </pre>
 *
 * <p>The fall to zero at 20 °C is doubtful memory. The limits belong to monthly means: a single
 * evening has no class.
 */
public enum HumidityClass {
  /** Up to 270 Pa at 0 °C and below. */
  CLASS_1(1, 270, 0.002),
  /** Up to 540 Pa at 0 °C and below. */
  CLASS_2(2, 540, 0.004),
  /** Up to 810 Pa at 0 °C and below. */
  CLASS_3(3, 810, 0.006),
  /** Up to 1080 Pa at 0 °C and below. */
  CLASS_4(4, 1080, 0.008),
  /** Above the limit of class 4; without upper limit in the edition of 2012. */
  CLASS_5(5, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Outdoor temperature [°C] at and above which the limits are zero and classes mean nothing. */
  public static final double VANISHES_AT_CELSIUS = 20;

  private final int number;
  private final double limitPa;
  private final double limitKgM3;

  HumidityClass(int number, double limitPa, double limitKgM3) {
    this.number = number;
    this.limitPa = limitPa;
    this.limitKgM3 = limitKgM3;
  }

  /**
   * The class of an excess. An excess that equals a limit belongs to the class that it bounds; a
   * negative one to class 1.
   *
   * @param excessPa monthly mean vapour pressure excess Δp [Pa]
   * @param outdoorCelsius monthly mean outdoor temperature [°C]
   * @return empty from {@value #VANISHES_AT_CELSIUS} °C up, where all limits are zero
   */
  public static Optional<HumidityClass> of(double excessPa, double outdoorCelsius) {
    Bounds.finite("vapour pressure excess [Pa]", excessPa);
    double share = share(outdoorCelsius);
    if (share == 0) {
      return Optional.empty();
    }
    return Arrays.stream(values()).filter(c -> excessPa <= c.limitPa * share).findFirst();
  }

  /** The number that the standard gives it, 1 to 5. */
  public int number() {
    return number;
  }

  /** Upper limit of the vapour pressure excess [Pa]; none for class 5. */
  public OptionalDouble upperLimitPa(double outdoorCelsius) {
    return limit(limitPa, outdoorCelsius);
  }

  /** Upper limit of the vapour content excess [kg/m³]; none for class 5. */
  public OptionalDouble upperLimitKgM3(double outdoorCelsius) {
    return limit(limitKgM3, outdoorCelsius);
  }

  private OptionalDouble limit(double atZero, double outdoorCelsius) {
    double share = share(outdoorCelsius);
    return this == CLASS_5 ? OptionalDouble.empty() : OptionalDouble.of(atZero * share);
  }

  private static double share(double outdoorCelsius) {
    Bounds.finite("outdoor temperature [°C]", outdoorCelsius);
    double falling = (VANISHES_AT_CELSIUS - outdoorCelsius) / VANISHES_AT_CELSIUS;
    return Math.min(1, Math.max(0, falling));
  }
}
