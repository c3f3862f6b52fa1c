package org.drysill.report.sheet;

import java.util.List;
import java.util.Map;

/**
 * The sheet in finished words, ready for its template.
 *
 * @param language BCP 47 tag of its language
 * @param paper {@code A4} or {@code letter}
 * @param title the title of the document
 * @param address how the home is called
 * @param visit the visit in a few words
 * @param heading the finding in one sentence
 * @param rows how things stand
 * @param steps what is to be done, in order
 * @param habits what helps until then
 * @param warnings what to do in danger
 * @param foot where it belongs to
 * @param labels fixed words of the page, by key
 */
public record HouseholdSheet(
    String language,
    String paper,
    String title,
    String address,
    String visit,
    String heading,
    List<SheetRow> rows,
    List<SheetStep> steps,
    List<String> habits,
    List<String> warnings,
    String foot,
    Map<String, String> labels) {
  /** Copies the collections. */
  public HouseholdSheet {
    rows = List.copyOf(rows);
    steps = List.copyOf(steps);
    habits = List.copyOf(habits);
    warnings = List.copyOf(warnings);
    labels = Map.copyOf(labels);
  }
}
