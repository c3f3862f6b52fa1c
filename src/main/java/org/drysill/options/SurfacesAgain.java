package org.drysill.options;

import java.util.List;
import org.drysill.assess.Home;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.PlaceRisk;

/** Assesses the cold surfaces once more, for a home or an indoor vapour that a measure changed. */
@FunctionalInterface
public interface SurfacesAgain {
  /**
   * Months with condensation or mould risk of every place.
   *
   * @param home the home, as changed
   * @param vapour its indoor vapour, as changed
   */
  List<PlaceRisk> assess(Home home, IndoorVapours vapour);
}
