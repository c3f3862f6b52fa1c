package org.drysill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.cautions.CautionAssessor;
import org.drysill.assess.change.ChangeAssessor;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.assess.elements.ElementAssessor;
import org.drysill.assess.elements.ElementsResult;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.logs.LogsAssessor;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.logs.air.LoggedAirAssessor;
import org.drysill.assess.model.AirFound;
import org.drysill.assess.model.ModelRules;
import org.drysill.assess.model.MoistureModelAssessor;
import org.drysill.assess.model.MoistureModelResult;
import org.drysill.assess.moisture.MoistureAssessor;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.recovery.HeatRecoveryAssessor;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.assess.surfaces.logged.LoggedSurfaces;
import org.drysill.assess.timeline.TimelineAssessor;
import org.drysill.assess.ventilation.VentilationAssessor;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.assess.ventilation.provided.LoggedTurns;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.elements.ElementDefaults;
import org.drysill.reference.limits.TimeLimits;
import org.drysill.reference.logs.LogRules;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.log.Logs;

/** Every chapter of the assessment, one after the other. */
final class Assessor {
  private final ReferenceData data;

  Assessor(ReferenceData data) {
    this.data = data;
  }

  /** A home without logs. */
  Assessment assess(Home home, Optional<Surveyed> before) {
    return assess(home, Logs.none(), before);
  }

  /**
   * Assesses a visit.
   *
   * @param home the home as it was seen
   * @param logs its logs
   * @param before the same at an earlier visit
   */
  Assessment assess(Home home, Logs logs, Optional<Surveyed> before) {
    VentilationResult air = ventilation(home, logs);
    LogsResult logged = LogsAssessor.assess(home, logs, LogRules.bundled(), data.readings());
    HumidityResult humidity = HumidityAssessor.assess(home, data.readings(), logged.criteria());
    MoistureResult moisture =
        MoistureAssessor.assess(
            home, data.moisture(), air.provided().wholeHome(), humidity, data.readings().balance());
    IndoorVapours vapour = IndoorVapours.of(home, humidity, logged);
    CondensationResult cold = SurfaceAssessor.assess(home, vapour, SurfaceTables.bundled());
    ElementsResult elements =
        ElementAssessor.assess(home, vapour, SurfaceTables.bundled(), ElementDefaults.bundled());
    MoistureModelResult model =
        MoistureModelAssessor.assess(
            home, AirFound.of(air), humidity, moisture, cold, modelRules());
    HeatRecoveryResult recovery =
        HeatRecoveryAssessor.assess(
            home, logs, flows(air), data.recovery(), data.readings().accuracy());
    return new Assessment(
        home,
        air,
        humidity,
        logged,
        LoggedAirAssessor.assess(
            home, logged, air, moisture.itemised(), LogRules.bundled(), data.readings()),
        moisture,
        vapour,
        cold,
        LoggedSurfaces.of(cold.places(), logged, SurfaceTables.bundled().surfaces().mouldLimit()),
        elements,
        model,
        recovery,
        before.map(
            then ->
                ChangeAssessor.assess(
                    facts(then),
                    facts(new Surveyed(home, logs), air, humidity, vapour, cold, recovery),
                    data.readings())),
        TimelineAssessor.assess(home.survey(), TimeLimits.all()),
        new CautionAssessor(data.cautions(), data.cautionFacts()).assess(home),
        assumptions(
            List.of(
                home.assumptions(),
                air.assumptions(),
                humidity.assumptions(),
                logged.assumptions(),
                moisture.assumptions(),
                cold.assumptions(),
                elements.assumptions(),
                model.assumptions(),
                recovery.assumptions())));
  }

  /** How alternating units turn is told by the logs of their heat recovery. */
  private VentilationResult ventilation(Home home, Logs logs) {
    Map<String, LoggedTurns> turns = new LinkedHashMap<>();
    HeatRecoveryAssessor.turns(home, logs, data.recovery(), data.readings().accuracy())
        .forEach(
            (fan, seen) ->
                turns.put(fan, new LoggedTurns(seen.supplyTime(), seen.otherTime(), seen.pause())));
    return VentilationAssessor.assess(home, data.rules(), data.ventilation(), turns);
  }

  private ModelRules modelRules() {
    return new ModelRules(
        ModelDefaults.bundled(),
        data.readings().balance(),
        SurfaceTables.bundled().defaults().paneFilm());
  }

  /**
   * A home as it was seen, with its logs.
   *
   * @param home the home
   * @param logs the logs
   */
  record Surveyed(Home home, Logs logs) {}

  /** An earlier visit, by the rules that hold for the later one. */
  private VisitFacts facts(Surveyed then) {
    Home home = then.home();
    VentilationResult air = ventilation(home, then.logs());
    LogsResult logged = LogsAssessor.assess(home, then.logs(), LogRules.bundled(), data.readings());
    HumidityResult humidity = HumidityAssessor.assess(home, data.readings(), logged.criteria());
    IndoorVapours vapour = IndoorVapours.of(home, humidity, logged);
    return facts(
        then,
        air,
        humidity,
        vapour,
        SurfaceAssessor.assess(home, vapour, SurfaceTables.bundled()),
        HeatRecoveryAssessor.assess(
            home, then.logs(), flows(air), data.recovery(), data.readings().accuracy()));
  }

  private static VisitFacts facts(
      Surveyed visit,
      VentilationResult air,
      HumidityResult humidity,
      IndoorVapours vapour,
      CondensationResult cold,
      HeatRecoveryResult recovery) {
    return new VisitFacts(
        visit.home(),
        visit.logs(),
        humidity,
        vapour,
        cold,
        recovery,
        Stream.of(air.findings(), humidity.findings(), cold.findings(), recovery.findings())
            .flatMap(List::stream)
            .toList());
  }

  private static Map<String, Figure> flows(VentilationResult air) {
    Map<String, Figure> flows = new LinkedHashMap<>();
    air.provided().fans().forEach(f -> flows.put(f.fan().id(), f.running()));
    return flows;
  }

  private static List<Assumption> assumptions(List<List<Assumption>> chapters) {
    return new ArrayList<>(
        chapters.stream()
            .flatMap(List::stream)
            .collect(
                Collectors.toMap(
                    Assumption::id, a -> a, (first, again) -> first, LinkedHashMap::new))
            .values());
  }
}
