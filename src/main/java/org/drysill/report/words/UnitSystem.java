package org.drysill.report.words;

/** The units that the readers of a jurisdiction are used to. */
public enum UnitSystem {
  /** Litres a second, °C, metres. */
  METRIC,
  /** Cubic metres an hour, else as metric. */
  METRIC_HOURLY,
  /** Cubic feet a minute, °F, feet. */
  CUSTOMARY
}
