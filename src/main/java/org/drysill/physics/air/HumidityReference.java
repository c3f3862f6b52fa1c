package org.drysill.physics.air;

/**
 * What a relative humidity below 0 °C is relative to. Weather services and electronic sensors quote
 * it over liquid water at all temperatures; hygrothermal standards reckon over ice below 0 °C. At
 * −5 °C, 80 % over water is 84 % over ice. From 0 °C up the two are the same.
 */
public enum HumidityReference {
  /** Saturation over liquid water at every temperature. */
  OVER_WATER,
  /** Saturation over ice below 0 °C, over water from 0 °C up. */
  OVER_ICE
}
