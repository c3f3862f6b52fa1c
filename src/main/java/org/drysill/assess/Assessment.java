package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.cautions.CautionsResult;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.elements.ElementsResult;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.logs.air.LoggedAir;
import org.drysill.assess.model.MoistureModelResult;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.logged.LoggedSurface;
import org.drysill.assess.timeline.TimelineResult;
import org.drysill.assess.ventilation.VentilationResult;

/**
 * What a survey means: every chapter of the assessment of a home.
 *
 * @param home the home with every gap filled
 * @param ventilation does it get enough air
 * @param humidity what the readings say of its air
 * @param logs what the loggers recorded of it
 * @param loggedAir what they tell of its air change and of what gave off water
 * @param moisture how much water goes into that air
 * @param vapour the indoor vapour that the surfaces were judged with
 * @param condensation where that water meets cold surfaces
 * @param loggedSurfaces cold surfaces over the logs of their rooms
 * @param elements what of it settles within built-up walls
 * @param model what the readings of all rooms tell together of its air and its water
 * @param recovery what its heat recovery units really keep
 * @param change what changed since an earlier visit, where there was one
 * @param timeline the days of its story against limits of time that are known
 * @param cautions the hazards that its facts call up
 * @param assumptions what was taken for granted, each once
 */
public record Assessment(
    Home home,
    VentilationResult ventilation,
    HumidityResult humidity,
    LogsResult logs,
    LoggedAir loggedAir,
    MoistureResult moisture,
    IndoorVapours vapour,
    CondensationResult condensation,
    List<LoggedSurface> loggedSurfaces,
    ElementsResult elements,
    MoistureModelResult model,
    HeatRecoveryResult recovery,
    Optional<ChangeResult> change,
    TimelineResult timeline,
    CautionsResult cautions,
    List<Assumption> assumptions) {
  /** Copies the list. */
  public Assessment {
    loggedSurfaces = List.copyOf(loggedSurfaces);
    assumptions = List.copyOf(assumptions);
  }
}
