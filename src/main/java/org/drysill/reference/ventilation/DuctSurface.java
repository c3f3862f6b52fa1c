package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** The inside of a duct, as losses tell it apart. */
public enum DuctSurface implements Worded {
  /** Rigid plastic. */
  SMOOTH_PLASTIC,
  /** Sheet metal, a metal pipe. */
  METAL,
  /** Flexible duct pulled taut. */
  TAUT_FLEXIBLE,
  /** Flexible duct left slack. */
  SLACK_FLEXIBLE
}
