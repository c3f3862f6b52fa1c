package org.drysill.report.words;

/** The units that the readers of a jurisdiction are used to. */
public enum UnitSystem {
  /** Litres a second, °C, metres. */
  METRIC,
  /** Cubic feet a minute, °F, feet. */
  CUSTOMARY
}
