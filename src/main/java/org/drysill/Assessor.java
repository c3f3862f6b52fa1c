package org.drysill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Assessment;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.cautions.CautionAssessor;
import org.drysill.assess.change.ChangeAssessor;
import org.drysill.assess.change.VisitFacts;
import org.drysill.assess.elements.ElementAssessor;
import org.drysill.assess.elements.ElementsResult;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
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
import org.drysill.assess.ventilation.VentilationAssessor;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.elements.ElementDefaults;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.reference.surfaces.SurfaceTables;

/** Every chapter of the assessment, one after the other. */
final class Assessor {
  private final ReferenceData data;

  Assessor(ReferenceData data) {
    this.data = data;
  }

  Assessment assess(Home home, Optional<Home> before) {
    VentilationResult air = VentilationAssessor.assess(home, data.rules(), data.ventilation());
    HumidityResult humidity = HumidityAssessor.assess(home, data.readings());
    MoistureResult moisture =
        MoistureAssessor.assess(
            home, data.moisture(), air.provided().wholeHome(), humidity, data.readings().balance());
    IndoorVapours vapour = IndoorVapours.of(humidity);
    CondensationResult cold = SurfaceAssessor.assess(home, vapour, SurfaceTables.bundled());
    ElementsResult elements =
        ElementAssessor.assess(home, vapour, SurfaceTables.bundled(), ElementDefaults.bundled());
    MoistureModelResult model =
        MoistureModelAssessor.assess(
            home, AirFound.of(air), humidity, moisture, cold, modelRules());
    HeatRecoveryResult recovery =
        HeatRecoveryAssessor.assess(home, flows(air), data.recovery(), data.readings().accuracy());
    return new Assessment(
        home,
        air,
        humidity,
        moisture,
        vapour,
        cold,
        elements,
        model,
        recovery,
        before.map(
            then ->
                ChangeAssessor.assess(
                    facts(then), new VisitFacts(home, humidity, cold), data.readings())),
        new CautionAssessor(data.cautions(), data.cautionFacts()).assess(home),
        assumptions(
            List.of(
                home.assumptions(),
                air.assumptions(),
                humidity.assumptions(),
                moisture.assumptions(),
                cold.assumptions(),
                elements.assumptions(),
                model.assumptions(),
                recovery.assumptions())));
  }

  private ModelRules modelRules() {
    return new ModelRules(
        ModelDefaults.bundled(),
        data.readings().balance(),
        SurfaceTables.bundled().defaults().paneFilm());
  }

  private VisitFacts facts(Home home) {
    HumidityResult humidity = HumidityAssessor.assess(home, data.readings());
    return new VisitFacts(
        home,
        humidity,
        SurfaceAssessor.assess(home, IndoorVapours.of(humidity), SurfaceTables.bundled()));
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
