package org.drysill.physics.layers;

import java.util.Arrays;

/** Water within an element in one month, plane by plane. */
public final class MonthWater {
  private final MonthClimate climate;
  private final VapourLine line;
  private final double[] saturationPa;
  private final double[] gained;
  private final double[] stored;

  MonthWater(
      MonthClimate climate,
      VapourLine line,
      double[] saturationPa,
      double[] gained,
      double[] stored) {
    this.climate = climate;
    this.line = line;
    this.saturationPa = saturationPa;
    this.gained = gained;
    this.stored = stored;
  }

  /** The air on both sides. */
  public MonthClimate climate() {
    return climate;
  }

  /** Number of planes, both surfaces included. */
  public int planes() {
    return stored.length;
  }

  /** Vapour pressure through the element at the beginning of the month. */
  public VapourLine line() {
    return line;
  }

  /** Saturation vapour pressure at a plane [Pa]. */
  public double saturationPa(int plane) {
    return saturationPa[plane];
  }

  /** Water that settled at a plane in the month [kg/m²]; negative where it left. */
  public double gainedKgM2(int plane) {
    return gained[plane];
  }

  /** Water at a plane at the end of the month [kg/m²]. */
  public double storedKgM2(int plane) {
    return stored[plane];
  }

  /** Water within the whole element at the end of the month [kg/m²]. */
  public double storedKgM2() {
    return Arrays.stream(stored).sum();
  }

  /** Water that settled in the month, planes that dried left out [kg/m²]. */
  public double condensedKgM2() {
    return Arrays.stream(gained).filter(g -> g > 0).sum();
  }

  double[] storedByPlane() {
    return stored.clone();
  }
}
