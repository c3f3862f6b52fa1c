package org.drysill.report.subject;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.cautions.CautionsResult;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.elements.ElementsResult;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.model.MoistureModelResult;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.timeline.TimelineResult;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.options.OptionsResult;
import org.drysill.survey.Edition;
import org.drysill.survey.Survey;
import org.drysill.survey.SurveyFile;

/**
 * What a report is about.
 *
 * @param file the survey as it was read
 * @param assessment what it means
 * @param options what could be done
 * @param provenance from what and by what it was made
 */
public record Subject(
    SurveyFile file, Assessment assessment, OptionsResult options, Provenance provenance) {
  /** The same with the digest of the results, which the results themselves cannot tell. */
  public Subject withResults(String sha256) {
    return new Subject(file, assessment, options, provenance.withResults(sha256));
  }

  /** What was seen. */
  public Survey survey() {
    return file.survey();
  }

  /** For whom it is written: a surveyor where the survey does not say. */
  public Edition edition() {
    return survey().visit().edition().orElse(Edition.SURVEY);
  }

  /** The results that hold figures, in the order in which a reader meets them. */
  public List<Object> results() {
    return List.of(
        home(),
        ventilation(),
        humidity(),
        logs(),
        assessment.loggedAir(),
        condensation(),
        assessment.loggedSurfaces(),
        elements(),
        recovery(),
        moisture(),
        model(),
        change(),
        timeline(),
        cautions(),
        options,
        assessment.assumptions());
  }

  /** How the home is called. */
  public String address() {
    return survey().dwelling().address().orElse("The home");
  }

  /** The home with every gap filled. */
  public Home home() {
    return assessment.home();
  }

  /** Ventilation. */
  public VentilationResult ventilation() {
    return assessment.ventilation();
  }

  /** Readings of the air. */
  public HumidityResult humidity() {
    return assessment.humidity();
  }

  /** What the loggers recorded. */
  public LogsResult logs() {
    return assessment.logs();
  }

  /** Moisture by source. */
  public MoistureResult moisture() {
    return assessment.moisture();
  }

  /** What the readings of all rooms tell together. */
  public MoistureModelResult model() {
    return assessment.model();
  }

  /** Cold surfaces. */
  public CondensationResult condensation() {
    return assessment.condensation();
  }

  /** Water within walls. */
  public ElementsResult elements() {
    return assessment.elements();
  }

  /** Heat recovery in use. */
  public HeatRecoveryResult recovery() {
    return assessment.recovery();
  }

  /** What changed since an earlier visit. */
  public Optional<ChangeResult> change() {
    return assessment.change();
  }

  /** The days of its story against limits of time. */
  public TimelineResult timeline() {
    return assessment.timeline();
  }

  /** What can hurt someone. */
  public CautionsResult cautions() {
    return assessment.cautions();
  }
}
