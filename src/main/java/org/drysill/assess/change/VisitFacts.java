package org.drysill.assess.change;

import java.time.LocalDate;
import org.drysill.assess.Home;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.surfaces.CondensationResult;

/**
 * What one visit found.
 *
 * @param home the home as surveyed
 * @param humidity what its readings say
 * @param condensation what its surfaces say
 */
public record VisitFacts(Home home, HumidityResult humidity, CondensationResult condensation) {
  LocalDate date() {
    return home.survey().visit().date();
  }
}
