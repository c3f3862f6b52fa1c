package org.drysill.physics.recovery.cycle;

/** Why a log shows no cycle from which a ratio may be read. */
public enum NoCycle {
  /** Hardly any reading. */
  TOO_SHORT,
  /** The air before both faces is too much alike for a ratio. */
  NO_DIFFERENCE,
  /** The temperature at the face hardly moves. */
  NO_SWING,
  /** It moves, but from one reading to the next as much as over longer times. */
  SCATTER,
  /** Too few readings in a half-cycle. */
  TOO_COARSE,
  /** It swings, but slower than any unit turns. */
  TOO_SLOW,
  /** It swings, but faster than any unit turns. */
  TOO_FAST,
  /** It swings, but not at a steady pace. */
  IRREGULAR,
  /** Fewer whole cycles than it takes. */
  TOO_FEW
}
