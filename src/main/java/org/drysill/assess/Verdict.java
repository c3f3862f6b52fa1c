package org.drysill.assess;

import org.drysill.physics.Range;

/** What a comparison with a published figure shows. Never "compliant". */
public enum Verdict {
  /** Even the lowest value reaches what is asked. */
  MEETS,
  /** Even the highest value falls short. */
  SHORT,
  /** It cannot be told from what is known. */
  UNKNOWN;

  /** Share of a limit within which a computed value equals it: far below any digit that counts. */
  private static final double ROUNDING = 1e-9;

  /** Compares a provided range with a lower limit of the same unit; equality reaches it. */
  public static Verdict atLeast(Range provided, double required) {
    return atLeast(provided, Range.exactly(required));
  }

  /** Compares a range with an upper limit of its unit that it must stay below; equality fails. */
  public static Verdict below(Range value, double limit) {
    if (reaches(value.low(), limit)) {
      return SHORT;
    }
    return reaches(value.high(), limit) ? UNKNOWN : MEETS;
  }

  /** Compares a provided range with a lower limit that is itself not known exactly. */
  public static Verdict atLeast(Range provided, Range required) {
    if (reaches(provided.low(), required.high())) {
      return MEETS;
    }
    return reaches(provided.high(), required.low()) ? UNKNOWN : SHORT;
  }

  /** Compares a range with an upper limit of its unit that it may reach; equality passes. */
  public static Verdict atMost(Range value, double limit) {
    if (reaches(limit, value.high())) {
      return MEETS;
    }
    return reaches(limit, value.low()) ? UNKNOWN : SHORT;
  }

  /** At least as much, but for the rounding of sums and products. */
  private static boolean reaches(double value, double limit) {
    return value >= limit - ROUNDING * Math.abs(limit);
  }
}
