package org.drysill.physics.recovery.cycle;

/** What a log of cycles tells. */
public sealed interface CycleOutcome permits CycleRatio, CycleOutcome.None {
  /**
   * No ratio.
   *
   * @param why the reason
   * @param stepS median time from one reading to the next [s]
   * @param halfCycleS the half-cycle that it seems to have [s]; NaN where none is seen
   * @param cycles whole cycles that were seen
   */
  record None(NoCycle why, double stepS, double halfCycleS, int cycles) implements CycleOutcome {}
}
