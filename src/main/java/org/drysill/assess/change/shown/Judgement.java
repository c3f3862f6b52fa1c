package org.drysill.assess.change.shown;

import java.util.Optional;

/**
 * Whether a change is shown, and by which criterion.
 *
 * @param shown the result
 * @param doubt why it is not shown
 * @param criterion the criterion with its limit, in words that can end a sentence
 */
public record Judgement(Shown shown, Optional<Doubt> doubt, String criterion) {

  /** Not shown, whatever the readings. */
  public static Judgement notShown(Doubt doubt, String criterion) {
    return new Judgement(Shown.NOT_SHOWN, Optional.of(doubt), criterion);
  }

  /**
   * By the error alone: shown where the difference is greater than the error.
   *
   * @param change after less before
   * @param error of both visits together, in the unit of the change
   * @param errorSaid the error in words, with its unit
   */
  public static Judgement byError(double change, double error, String errorSaid) {
    if (Math.abs(change) <= error) {
      return notShown(
          Doubt.WITHIN_ERROR,
          "the change is within the error of both visits together, " + errorSaid);
    }
    return new Judgement(
        change < 0 ? Shown.FELL : Shown.ROSE,
        Optional.empty(),
        "the change is greater than the error of both visits together, " + errorSaid);
  }

  /** True where a change is shown. */
  public boolean isShown() {
    return shown != Shown.NOT_SHOWN;
  }

  /** In a few words, for a table: {@code fell}, {@code rose}, {@code not shown}. */
  public String words() {
    return switch (shown) {
      case FELL -> "fell";
      case ROSE -> "rose";
      case NOT_SHOWN -> "not shown";
    };
  }
}
