package org.drysill.report.block;

import java.util.List;

/**
 * A note in the margin.
 *
 * @param working the number of a working, such as {@code w12}; empty for none
 * @param lead its first words, printed bold; may be empty
 * @param text the rest
 * @param also the numbers of further workings, after the text
 */
public record Note(String working, String lead, String text, List<String> also) {
  /** Copies the list. */
  public Note {
    also = List.copyOf(also);
  }

  /** A note that leads to a working. */
  public static Note working(String number, String text) {
    return new Note(number, "", text, List.of());
  }

  /** A note with bold first words. */
  public static Note led(String lead, String text) {
    return new Note("", lead, text, List.of());
  }

  /** A note that leads to workings and says no more. */
  public static Note workings(List<String> numbers) {
    return new Note("", "", numbers.size() == 1 ? "Working" : "Workings", numbers);
  }
}
