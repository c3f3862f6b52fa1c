package org.drysill.assess.change;

/** What two readings show of a change. */
public enum Shown {
  /** It fell by more than the instruments' errors together. */
  FELL,
  /** It rose by more than the instruments' errors together. */
  ROSE,
  /** The change is within the instruments' errors, or the weather was too unlike. */
  NOT_SHOWN
}
