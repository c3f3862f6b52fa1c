package org.drysill.assess;

/** On what a figure rests; of several inputs the weakest counts. */
public enum Basis {
  /** Read on an instrument during the visit. */
  MEASURED,
  /** Stated by the maker or the occupant, not checked. */
  DECLARED,
  /** Printed in a cited document. */
  PUBLISHED,
  /** Follows from other figures by a cited formula. */
  CALCULATED,
  /** Taken for want of anything better; listed among the assumptions. */
  ASSUMED
}
