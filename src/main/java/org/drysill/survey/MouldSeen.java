package org.drysill.survey;

import org.drysill.yaml.Worded;

/** How much mould was seen. */
public enum MouldSeen implements Worded {
  /** None. */
  NONE,
  /** Single specks. */
  SPECKS,
  /** Patches. */
  PATCHES,
  /** A large area. */
  EXTENSIVE
}
