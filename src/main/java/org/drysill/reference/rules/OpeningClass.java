package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Openings as airing rules tell them apart. */
public enum OpeningClass implements Worded {
  /** A window that turns about a hinge or pivot. */
  HINGED,
  /** A sash or a sliding window. */
  SLIDING,
  /** A door to outside. */
  EXTERNAL_DOOR
}
