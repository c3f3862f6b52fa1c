package org.drysill.physics.tracer;

/**
 * Why a fall is no decay to read a rate from. Beside each: what the two numbers of {@link
 * Decay.Rejected} are.
 */
public enum Rejection {
  /** Readings found and needed. */
  TOO_FEW_READINGS,
  /** Vapour: the excess before the rise, to which it falls, was not logged. Both 0. */
  LEVEL_BEFORE_UNKNOWN,
  /** The log or the readable part ends early: rate times time found and needed. */
  TOO_SHORT,
  /** A gap in the log cuts it off: rate times time found and needed. */
  CUT_BY_GAP,
  /** Somebody came back or something gave off more: rate times time found and needed. */
  ROSE_AGAIN,
  /** It stopped falling while still high: rate times time found and needed. */
  TOO_FLAT,
  /** It began too low to be followed far enough: height above its final level found and needed. */
  TOO_WEAK,
  /** Outdoor air moved: its movement as a share of the fall, found and allowed. */
  OUTDOOR_MOVED,
  /** Rate of the first half over that of the second, found and allowed (or its inverse). */
  NOT_EXPONENTIAL,
  /** The readings leave the curve by more than the sensor scatters: R² found and needed. */
  NOT_SMOOTH,
  /** Standard error of the rate as a share of it, found and allowed. */
  TOO_UNCERTAIN
}
