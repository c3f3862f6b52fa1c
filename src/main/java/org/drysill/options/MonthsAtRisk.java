package org.drysill.options;

import java.util.List;

/**
 * How many places are at risk in each month, January first, at likely values.
 *
 * @param mould walls, corners and reveals at risk of mould
 * @param wetGlass windows with condensation on a cold night
 */
public record MonthsAtRisk(List<Integer> mould, List<Integer> wetGlass) {
  /** Copies the lists. */
  public MonthsAtRisk {
    mould = List.copyOf(mould);
    wetGlass = List.copyOf(wetGlass);
  }
}
