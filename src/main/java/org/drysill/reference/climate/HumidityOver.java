package org.drysill.reference.climate;

import org.drysill.yaml.Worded;

/** What a relative humidity below 0 °C is relative to. */
public enum HumidityOver implements Worded {
  /** Saturation over liquid water, as weather services and sensors quote it. */
  WATER,
  /** Saturation over ice below 0 °C, as hygrothermal standards reckon. */
  ICE
}
