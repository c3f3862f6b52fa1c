package org.drysill.reference.measures;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * The surface that a measure makes warmer.
 *
 * @param glazing the glazing that the window then has
 * @param shortfallRemoved share of what the temperature factor lacks to 1 that it takes away
 * @param uValueAfter thermal transmittance afterwards [W/(m²·K)]
 * @param source where these come from
 */
public record SurfaceEffect(
    @Key(about = "The glazing that the window then has", example = "triple", vocabulary = "glazing")
        Optional<String> glazing,
    @Key(about = "Share of what the factor lacks to 1 that is taken away, as ratio")
        Optional<Spread> shortfallRemoved,
    @Key(about = "Thermal transmittance afterwards, in W/(m2.K)") Optional<Spread> uValueAfter,
    @Key(about = "Where these come from") Citation source) {
  private static final double LEAST_U = 0.05;
  private static final double GREATEST_U = 10;

  /** Refuses shares and U-values that cannot be. */
  public SurfaceEffect {
    if (!Spread.isWithin(shortfallRemoved, 0, 1)) {
      throw new IllegalArgumentException("shortfall_removed from 0 to 1");
    }
    if (!Spread.isWithin(uValueAfter, LEAST_U, GREATEST_U)) {
      throw new IllegalArgumentException("u_value_after from 0.05 to 10 W/(m2.K)");
    }
  }
}
