package org.drysill.assess.change.shown;

/** What two visits show of a change. */
public enum Shown {
  /** It fell by more than the errors of both visits together. */
  FELL,
  /** It rose by more than the errors of both visits together. */
  ROSE,
  /** No change is shown; a {@link Doubt} says why. */
  NOT_SHOWN
}
