package org.drysill.options.effect;

import java.util.Comparator;
import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.options.site.Candidate;

/**
 * The home as several measures leave its windows, cold spots and warmth, at their likely effects.
 * Where two touch the same place the stronger counts; effects on one place are not added up.
 */
public final class SurfacesTogether {
  private final Assessment assessment;
  private final ChangedSurfaces changed;

  /** For a home as it is. */
  public SurfacesTogether(Assessment assessment) {
    this.assessment = assessment;
    this.changed = new ChangedSurfaces(assessment, Strength.LIKELY);
  }

  /** The home with all of them. */
  public Home with(List<Candidate> candidates) {
    Home home = assessment.home();
    // Each starts from the factors of today, so the strongest comes last.
    for (Candidate candidate :
        candidates.stream()
            .sorted(Comparator.comparingDouble(SurfacesTogether::strength))
            .toList()) {
      home = changed.with(candidate, home);
    }
    return home;
  }

  private static double strength(Candidate candidate) {
    return candidate
        .measure()
        .surface()
        .flatMap(s -> s.shortfallRemoved())
        .map(s -> s.range().likely())
        .orElse(0.0);
  }
}
