package org.drysill.options.effect;

import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.assess.surfaces.PlaceRisk;
import org.drysill.options.SurfacesAgain;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.Measure;

/** The surfaces of a home assessed again with a measure, at its likely effect and at both ends. */
record SurfacesWith(Assessment assessment, SurfacesAgain surfaces) {

  /**
   * The comparison.
   *
   * @param candidate the measure and its places
   * @param ratio by what it multiplies the vapour excess
   */
  SurfaceCompared of(Candidate candidate, Range ratio) {
    List<PlaceRisk> likely = at(Strength.LIKELY, candidate, ratio);
    boolean spread = ratio.isSpread() || warms(candidate.measure());
    return new SurfaceCompared(
        assessment.condensation().places().stream().map(PlaceRisk::of).toList(),
        likely,
        spread ? at(Strength.WEAKEST, candidate, ratio) : likely,
        spread ? at(Strength.STRONGEST, candidate, ratio) : likely);
  }

  private List<PlaceRisk> at(Strength strength, Candidate candidate, Range ratio) {
    return surfaces.assess(
        new ChangedSurfaces(assessment, strength).with(candidate),
        new ScaledVapour(assessment).times(strength.left(ratio)));
  }

  private static boolean warms(Measure measure) {
    return measure.warmth().isPresent()
        || measure.surface().flatMap(s -> s.shortfallRemoved()).isPresent();
  }
}
