package org.drysill.options.effect;

import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.SurfaceEffect;
import org.drysill.survey.ColdSpot;

/** The home as a measure leaves its windows, cold spots and warmth. */
record ChangedSurfaces(Assessment assessment) {

  Home with(Candidate candidate) {
    Home home = assessment.home();
    Measure measure = candidate.measure();
    Home changed = measure.surface().map(s -> surfaces(candidate, s)).orElse(home);
    return measure
        .warmth()
        .map(w -> ChangedHome.heated(changed, rooms(candidate), w.raisesBy().range()))
        .orElse(changed);
  }

  private static List<String> rooms(Candidate candidate) {
    return candidate.rooms().stream().map(RoomFacts::id).toList();
  }

  private Home surfaces(Candidate candidate, SurfaceEffect effect) {
    Home home = assessment.home();
    Home glazed =
        effect
            .glazing()
            .map(g -> ChangedHome.glazed(home, candidate.scope().windows(), g))
            .orElse(home);
    return effect
        .shortfallRemoved()
        .map(
            s ->
                ChangedHome.warmer(
                    glazed, candidate.scope().coldSpots(), spot -> warmer(spot, s.range())))
        .orElse(glazed);
  }

  /** The factor then lacks less to 1: f' = 1 − (1 − f)·(1 − share). */
  private ColdSpot warmer(ColdSpot spot, Range share) {
    return assessment.condensation().places().stream()
        .filter(p -> p.id().equals(spot.id()))
        .map(p -> p.factor().figure().value())
        .findFirst()
        .map(
            f ->
                ChangedHome.factored(
                    spot,
                    new Range(
                        nearer(f.low(), share.low()),
                        nearer(f.likely(), share.likely()),
                        nearer(f.high(), share.high()))))
        .orElse(spot);
  }

  private static double nearer(double factor, double share) {
    return 1 - (1 - factor) * (1 - share);
  }
}
