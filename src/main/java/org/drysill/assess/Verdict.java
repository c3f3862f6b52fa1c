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

  /** Compares a provided range with a lower limit; equality reaches it. */
  public static Verdict atLeast(Range provided, double required) {
    if (provided.low() >= required) {
      return MEETS;
    }
    return provided.high() < required ? SHORT : UNKNOWN;
  }

  /** Compares a range with an upper limit that it must stay below; equality fails. */
  public static Verdict below(Range value, double limit) {
    if (value.high() < limit) {
      return MEETS;
    }
    return value.low() >= limit ? SHORT : UNKNOWN;
  }

  /** Compares a provided range with a lower limit that is itself not known exactly. */
  public static Verdict atLeast(Range provided, Range required) {
    if (provided.low() >= required.high()) {
      return MEETS;
    }
    return provided.high() < required.low() ? SHORT : UNKNOWN;
  }

  /** Compares a range with an upper limit that it may reach; equality passes. */
  public static Verdict atMost(Range value, double limit) {
    if (value.high() <= limit) {
      return MEETS;
    }
    return value.low() > limit ? SHORT : UNKNOWN;
  }
}
