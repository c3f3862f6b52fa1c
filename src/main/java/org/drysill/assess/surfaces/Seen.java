package org.drysill.assess.surfaces;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.survey.CondensationSeen;
import org.drysill.survey.MouldSeen;

/**
 * What was seen on a place.
 *
 * @param mould how much mould
 * @param mouldArea area with mould [m²]
 * @param condensation how often water
 */
public record Seen(
    Optional<MouldSeen> mould, Optional<Range> mouldArea, Optional<CondensationSeen> condensation) {
  /** Nothing was noted. */
  public static Seen nothingNoted() {
    return new Seen(Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** True where mould was seen. */
  public boolean mouldy() {
    return mould.filter(m -> m != MouldSeen.NONE).isPresent();
  }

  /** True where mould or water was seen. */
  public boolean trouble() {
    return mouldy() || condensation.filter(c -> c != CondensationSeen.NEVER).isPresent();
  }
}
