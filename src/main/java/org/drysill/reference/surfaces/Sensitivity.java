package org.drysill.reference.surfaces;

import org.drysill.physics.mould.MouldSensitivity;
import org.drysill.yaml.Worded;

/** The classes of the mould model by their words. */
public enum Sensitivity implements Worded {
  /** Raw sapwood. */
  VERY_SENSITIVE(MouldSensitivity.VERY_SENSITIVE),
  /** Planed wood, paper. */
  SENSITIVE(MouldSensitivity.SENSITIVE),
  /** Mineral materials, plastics. */
  MEDIUM_RESISTANT(MouldSensitivity.MEDIUM_RESISTANT),
  /** Glass, metal. */
  RESISTANT(MouldSensitivity.RESISTANT);

  private final MouldSensitivity physics;

  Sensitivity(MouldSensitivity physics) {
    this.physics = physics;
  }

  /** The class with its coefficients. */
  public MouldSensitivity physics() {
    return physics;
  }
}
