package org.drysill.options;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * When a measure has paid for itself, told honestly.
 *
 * @param kind whether there is an answer
 * @param against against what it is compared, such as {@code doing nothing}
 * @param years simple payback, where there is one [a]
 * @param words the answer as a sentence
 */
public record Payback(Kind kind, String against, Optional<Figure> years, String words) {

  /** The kinds of answer. */
  public enum Kind {
    /** It saves nothing and is not meant to. */
    NEVER,
    /** After a number of years. */
    YEARS,
    /** It costs no more at the start and saves from the first day. */
    AT_ONCE,
    /** It is itself the cheapest of all that would do the same. */
    CHEAPEST,
    /** A price or a flow is missing. */
    NOT_TOLD
  }
}
