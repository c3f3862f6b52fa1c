package org.drysill.physics.tracer.balance;

import org.drysill.physics.Range;

/** What a balance over a period gives, or why it gives nothing. */
public sealed interface Balance {
  /**
   * A flow or a production, in the unit that the question names.
   *
   * @param range low, likely and high
   */
  record Found(Range range) implements Balance {}

  /**
   * No answer.
   *
   * @param reason why
   * @param found what fell short
   * @param needed what it was held against
   */
  record Refused(Reason reason, double found, double needed) implements Balance {}

  /** Why a period cannot be balanced. Beside each: what the two numbers are. */
  enum Reason {
    /** Mean excess found and needed, in its unit. */
    EXCESS_TOO_SMALL,
    /** The lower end of the mean excess, found, and 0: its error reaches to nothing. */
    EXCESS_TOO_UNCERTAIN,
    /** Days found and needed. */
    PERIOD_TOO_SHORT,
    /** Share of the period with readings, found and needed. */
    TOO_MANY_GAPS
  }
}
