package org.drysill.report.subject;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.cautions.CautionsResult;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.options.OptionsResult;
import org.drysill.survey.Edition;
import org.drysill.survey.Survey;
import org.drysill.survey.SurveyFile;

/**
 * What a report is about.
 *
 * @param file the survey as it was read
 * @param home the home with every gap filled
 * @param ventilation ventilation
 * @param humidity readings of the air
 * @param moisture moisture by source
 * @param condensation cold surfaces
 * @param recovery heat recovery in use
 * @param change what changed since an earlier visit
 * @param cautions what can hurt someone
 * @param options what could be done
 * @param provenance from what and by what it was made
 */
public record Subject(
    SurveyFile file,
    Home home,
    VentilationResult ventilation,
    HumidityResult humidity,
    MoistureResult moisture,
    CondensationResult condensation,
    HeatRecoveryResult recovery,
    Optional<ChangeResult> change,
    CautionsResult cautions,
    OptionsResult options,
    Provenance provenance) {
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
        home, ventilation, humidity, condensation, recovery, moisture, change, cautions, options);
  }

  /** How the home is called. */
  public String address() {
    return survey().dwelling().address().orElse("The home");
  }
}
