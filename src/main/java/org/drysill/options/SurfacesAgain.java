package org.drysill.options;

import org.drysill.assess.Home;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.IndoorVapours;

/** Assesses the cold surfaces once more, for a home or an indoor vapour that a measure changed. */
@FunctionalInterface
public interface SurfacesAgain {
  /**
   * Condensation and mould risk.
   *
   * @param home the home, as changed
   * @param vapour its indoor vapour, as changed
   */
  CondensationResult assess(Home home, IndoorVapours vapour);
}
