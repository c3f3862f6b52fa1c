package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** What a performance criterion speaks of. */
public enum CriterionQuantity implements Worded {
  /** Relative humidity of the indoor air. */
  INDOOR_HUMIDITY,
  /** Relative humidity of the air at a surface. */
  SURFACE_WATER_ACTIVITY
}
