package org.drysill.options.effect;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.SurfaceEffect;

/** The home as a measure leaves its windows, cold spots and warmth. */
record ChangedSurfaces(Assessment assessment, Strength strength) {

  Home with(Candidate candidate) {
    return with(candidate, assessment.home());
  }

  /** The same for a home that other measures have changed already. */
  Home with(Candidate candidate, Home home) {
    Measure measure = candidate.measure();
    Home changed = measure.surface().map(s -> surfaces(candidate, s, home)).orElse(home);
    return measure
        .warmth()
        .map(w -> ChangedHome.heated(changed, rooms(candidate), strength.of(w.raisesBy().range())))
        .orElse(changed);
  }

  private static List<String> rooms(Candidate candidate) {
    return candidate.rooms().stream().map(RoomFacts::id).toList();
  }

  private Home surfaces(Candidate candidate, SurfaceEffect effect, Home home) {
    Home glazed =
        effect
            .glazing()
            .map(g -> ChangedHome.glazed(home, candidate.scope().windows(), g))
            .orElse(home);
    return effect
        .shortfallRemoved()
        .map(s -> warmer(glazed, candidate, effect, strength.of(s.range())))
        .orElse(glazed);
  }

  /** A measure with a transmittance of its own covers whole walls, and the corners in them. */
  private Home warmer(Home home, Candidate candidate, SurfaceEffect effect, Range share) {
    Home corners =
        ChangedHome.warmer(
            home,
            candidate.scope().coldSpots(),
            spot -> nearer(spot.id(), share).map(f -> ChangedHome.factored(spot, f)).orElse(spot));
    return effect.uValueAfter().isEmpty()
        ? corners
        : ChangedHome.insulated(corners, rooms(candidate), wall -> nearer(wall, share));
  }

  /** The factor then lacks less to 1: f' = 1 − (1 − f)·(1 − share). */
  private Optional<Range> nearer(String place, Range share) {
    return assessment.condensation().places().stream()
        .filter(p -> p.id().equals(place))
        .map(p -> p.factor().figure().value())
        .findFirst()
        .map(
            f ->
                new Range(
                    nearer(f.low(), share.low()),
                    nearer(f.likely(), share.likely()),
                    nearer(f.high(), share.high())));
  }

  private static double nearer(double factor, double share) {
    return 1 - (1 - factor) * (1 - share);
  }
}
