package org.drysill.report.block;

/**
 * A note in the margin.
 *
 * @param working the number of a working, such as {@code w12}; empty for none
 * @param lead its first words, printed bold; may be empty
 * @param text the rest
 */
public record Note(String working, String lead, String text) {
  /** A note that leads to a working. */
  public static Note working(String number, String text) {
    return new Note(number, "", text);
  }

  /** A note with bold first words. */
  public static Note led(String lead, String text) {
    return new Note("", lead, text);
  }
}
