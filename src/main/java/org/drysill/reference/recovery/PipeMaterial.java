package org.drysill.reference.recovery;

import org.drysill.yaml.Worded;

/** What a pipe through a wall is made of, as far as heat is concerned. */
public enum PipeMaterial implements Worded {
  /** Sheet steel or aluminium. */
  METAL,
  /** Plastic. */
  PLASTIC
}
