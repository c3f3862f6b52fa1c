package org.drysill.options.packs;

import java.util.Arrays;

/**
 * What measures do to the air and the water of zones; those of several are added up, save water, of
 * which each leaves a part of what the others left.
 */
final class VapourChange {
  final double[] supply;
  final double[] extract;
  final double[] supplyGone;
  final double[] extractGone;
  final double[] openings;
  final double[] waterLeft;

  /** No change of so many zones. */
  VapourChange(int zones) {
    supply = new double[zones];
    extract = new double[zones];
    supplyGone = new double[zones];
    extractGone = new double[zones];
    openings = new double[zones];
    waterLeft = new double[zones];
    Arrays.fill(waterLeft, 1);
  }

  /** True where it changes nothing. */
  boolean isNothing() {
    boolean nothing = true;
    for (int i = 0; i < supply.length; i++) {
      nothing &=
          supply[i] == 0
              && extract[i] == 0
              && supplyGone[i] == 0
              && extractGone[i] == 0
              && openings[i] == 0
              && waterLeft[i] == 1;
    }
    return nothing;
  }

  /** Both together. */
  VapourChange and(VapourChange other) {
    VapourChange both = new VapourChange(supply.length);
    for (int i = 0; i < supply.length; i++) {
      both.supply[i] = supply[i] + other.supply[i];
      both.extract[i] = extract[i] + other.extract[i];
      both.supplyGone[i] = supplyGone[i] + other.supplyGone[i];
      both.extractGone[i] = extractGone[i] + other.extractGone[i];
      both.openings[i] = openings[i] + other.openings[i];
      both.waterLeft[i] = waterLeft[i] * other.waterLeft[i];
    }
    return both;
  }

  /**
   * Adds what a measure brings that acts more or less than is likely; what goes with it is left.
   *
   * @param flow by what it moves more air [1]
   * @param water by what it spares more water [1]
   */
  void bring(VapourChange measure, double flow, double water) {
    for (int i = 0; i < supply.length; i++) {
      supply[i] += flow * measure.supply[i];
      extract[i] += flow * measure.extract[i];
      openings[i] += flow * measure.openings[i];
      waterLeft[i] *= Math.max(0, 1 - water * (1 - measure.waterLeft[i]));
    }
  }

  /**
   * Adds what goes with a fan.
   *
   * @param times by what that fan moves more than is likely [1]
   */
  void lose(VapourChange fan, double times) {
    for (int i = 0; i < supply.length; i++) {
      supplyGone[i] += times * fan.supplyGone[i];
      extractGone[i] += times * fan.extractGone[i];
    }
  }
}
