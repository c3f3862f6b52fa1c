package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** A bend, as losses tell it apart. */
public enum DuctBend implements Worded {
  /** A curve as wide as the duct or wider. */
  SWEPT,
  /** A corner. */
  SHARP,
  /** Nobody has looked. */
  NOT_KNOWN
}
