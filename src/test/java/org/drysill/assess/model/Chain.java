package org.drysill.assess.model;

import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.moisture.MoistureAssessor;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.assess.ventilation.VentilationAssessor;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.rules.RuleCatalogue;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.reference.ventilation.VentilationDefaults;

/** The chapters that the model stands on, from the text of a survey. */
record Chain(
    Home home,
    AirFound found,
    HumidityResult humidity,
    MoistureResult moisture,
    CondensationResult surfaces) {
  static final ModelRules RULES =
      new ModelRules(
          ModelDefaults.bundled(),
          ReadingRules.bundled().balance(),
          SurfaceTables.bundled().defaults().paneFilm());

  static Chain of(String text) {
    Home home = HomeFixtures.of(HomeFixtures.read(text));
    AirFound found =
        AirFound.of(
            VentilationAssessor.assess(
                home, RuleCatalogue.bundled(), VentilationDefaults.bundled()));
    HumidityResult humidity = HumidityAssessor.assess(home, ReadingRules.bundled());
    return new Chain(
        home,
        found,
        humidity,
        MoistureAssessor.assess(
            home,
            MoistureSources.bundled(),
            found.provided().wholeHome(),
            humidity,
            ReadingRules.bundled().balance()),
        SurfaceAssessor.assess(home, IndoorVapours.of(humidity), SurfaceTables.bundled()));
  }

  ProvidedAir air() {
    return found.provided();
  }

  MoistureModelResult assess() {
    return MoistureModelAssessor.assess(home, found, humidity, moisture, surfaces, RULES);
  }

  HomeModel believed() {
    return MoistureModelAssessor.believed(home, found, humidity, moisture, surfaces, RULES);
  }
}
