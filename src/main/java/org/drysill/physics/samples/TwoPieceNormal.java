package org.drysill.physics.samples;

import org.drysill.physics.Range;
import org.drysill.physics.zones.fit.LogNormal;

/**
 * A range as a distribution: the likely value is the median, and the range holds 95 of 100 cases;
 * below and above the likely value normal, each side with its own width.
 *
 * <pre>x(z) = likely + z/1.96 · (z &lt; 0 ? likely − low : high − likely)</pre>
 */
public final class TwoPieceNormal {
  private TwoPieceNormal() {}

  /**
   * The value of a range at a deviate.
   *
   * @param z normal with mean 0 and deviation 1
   */
  public static double at(Range range, double z) {
    double side = z < 0 ? range.likely() - range.low() : range.high() - range.likely();
    return range.likely() + z / LogNormal.Z95 * side;
  }

  /** The same, held between bounds that nature sets. */
  public static double at(Range range, double z, double least, double most) {
    return Math.max(least, Math.min(most, at(range, z)));
  }
}
