package org.drysill.assess.change.visit;

import java.time.LocalDate;
import java.util.List;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.survey.log.Logs;

/**
 * What one visit found.
 *
 * @param home the home as surveyed
 * @param logs its logs
 * @param humidity what its readings say
 * @param vapour the indoor vapour that its surfaces were judged with
 * @param condensation what its surfaces say
 * @param recovery what its heat recovery says
 * @param findings its comparisons with published figures
 */
public record VisitFacts(
    Home home,
    Logs logs,
    HumidityResult humidity,
    IndoorVapours vapour,
    CondensationResult condensation,
    HeatRecoveryResult recovery,
    List<Finding> findings) {
  /** Copies the list. */
  public VisitFacts {
    findings = List.copyOf(findings);
  }

  /** The day of the visit. */
  public LocalDate date() {
    return home.survey().visit().date();
  }
}
