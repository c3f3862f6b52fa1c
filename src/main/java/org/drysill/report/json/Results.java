package org.drysill.report.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.elements.WallWithin;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.logs.air.LoggedAir;
import org.drysill.assess.model.MoistureModelResult;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.logged.LoggedSurface;
import org.drysill.assess.timeline.TimelineResult;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.options.OptionsResult;
import org.drysill.report.subject.Provenance;
import org.drysill.report.subject.Subject;
import org.drysill.report.working.Found;

/**
 * The results file of a survey.
 *
 * @param drysill version of the format of this file
 * @param visitDate day of the visit
 * @param ventilation whether the home gets enough air
 * @param humidity what the readings and the logs of the visit say of its air
 * @param moisture how much water goes into that air
 * @param moistureModel what the readings of all rooms tell together of its air and its water
 * @param condensation where that water meets cold surfaces and what settles within walls
 * @param heatRecovery what heat recovery units really keep
 * @param change what changed since an earlier visit
 * @param timeline the days of the home's story against limits of time
 * @param options what could be done, with effect, money and rank
 * @param cautions what can hurt someone, the gravest first
 * @param assumptions what was taken for granted, each once
 * @param provenance from what and by what the report was made
 * @param working how each figure came about, by the id that its {@code working} tells
 */
record Results(
    int drysill,
    LocalDate visitDate,
    VentilationResult ventilation,
    Air humidity,
    MoistureResult moisture,
    MoistureModelResult moistureModel,
    Surfaces condensation,
    HeatRecoveryResult heatRecovery,
    Optional<ChangeResult> change,
    TimelineResult timeline,
    OptionsResult options,
    List<ShownCaution> cautions,
    List<Assumption> assumptions,
    Provenance provenance,
    List<ToldWorking> working) {
  private static final int FORMAT = 1;

  /**
   * What readings and logs say of the air.
   *
   * @param read what the readings say
   * @param logs what the loggers recorded
   * @param loggedAir what they tell of the air change and of what gave off water
   */
  record Air(@Beside HumidityResult read, LogsResult logs, LoggedAir loggedAir) {}

  /**
   * Surfaces and what is within the walls.
   *
   * @param cold the places where water may settle or mould may grow
   * @param walls what settles within built-up walls
   * @param loggedSurfaces cold surfaces over the logs of their rooms
   */
  record Surfaces(
      @Beside CondensationResult cold,
      List<WallWithin> walls,
      List<LoggedSurface> loggedSurfaces) {}

  static Results of(Subject subject) {
    Found found = Found.in(subject.results());
    return new Results(
        FORMAT,
        subject.survey().visit().date(),
        subject.ventilation(),
        new Air(subject.humidity(), subject.logs(), subject.assessment().loggedAir()),
        subject.moisture(),
        subject.model(),
        new Surfaces(
            subject.condensation(),
            subject.elements().walls(),
            subject.assessment().loggedSurfaces()),
        subject.recovery(),
        subject.change(),
        subject.timeline(),
        subject.options(),
        subject.cautions().shown(),
        found.assumptions(),
        subject.provenance(),
        ToldWorking.of(found.figures()));
  }
}
