package org.drysill.options;

/**
 * A measure that is not among the ranked ones.
 *
 * @param measure its id
 * @param title its title
 * @param kind which sort of reason
 * @param because the reason, to stand after "not here, because"
 */
public record NotHere(String measure, String title, Kind kind, String because) {

  /** The sorts of reason, in the order in which they are listed. */
  public enum Kind {
    /** The survey asks to leave it out. */
    EXCLUDED,
    /** It would be unsafe here. */
    UNSAFE,
    /** It would do nothing that can be shown here. */
    NO_EFFECT,
    /** What it would do cannot be reckoned. */
    NOT_TOLD,
    /** Its conditions do not hold here. */
    DOES_NOT_APPLY
  }
}
