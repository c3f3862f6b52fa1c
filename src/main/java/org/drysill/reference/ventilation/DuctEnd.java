package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** What stands at an end of a duct, or in it. */
public enum DuctEnd implements Worded {
  /** An open end into which air flows. */
  ENTRY,
  /** An open end out of which air flows. */
  OPEN_END,
  /** A grille or louvre. */
  WALL_GRILLE,
  /** A cowl on the roof. */
  ROOF_COWL,
  /** Flaps that the air pushes open. */
  GRAVITY_FLAP,
  /** A backdraught shutter within the duct. */
  SHUTTER
}
