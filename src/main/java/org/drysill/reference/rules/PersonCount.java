package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Who counts as a person. */
public enum PersonCount implements Worded {
  /** Those who live there. */
  OCCUPANTS,
  /** One more than there are bedrooms. */
  BEDROOMS_PLUS_ONE,
  /** One more than there are bedrooms, or those who live there where they are more. */
  DESIGN_OCCUPANCY
}
