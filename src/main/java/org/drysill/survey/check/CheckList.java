package org.drysill.survey.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.drysill.yaml.Nearest;
import org.drysill.yaml.Place;
import org.drysill.yaml.Places;
import org.drysill.yaml.Problem;

/** Collects what the checks find, each at its place. */
public final class CheckList {
  private final Places places;
  private final List<Problem> problems = new ArrayList<>();

  /** An empty list for a file whose keys stand at these places. */
  public CheckList(Places places) {
    this.places = places;
  }

  /** Notes a problem at the value of a key, or where the key would stand. */
  public void add(SurveyCode code, String key, String found, String expected) {
    add(code, key, found, expected, Optional.empty());
  }

  private void add(
      SurveyCode code, String key, String found, String expected, Optional<String> suggestion) {
    Place place = places.of(key);
    problems.add(
        new Problem(
            code.severity(),
            code.code(),
            place,
            key,
            found,
            expected,
            suggestion,
            places.line(place.line())));
  }

  /** Notes an id that refers to nothing, with the id that was probably meant. */
  void addUnknownId(SurveyCode code, String key, String id, Collection<String> known, String of) {
    String ids = known.isEmpty() ? "none is listed" : String.join(", ", known);
    add(code, key, quote(id), "the id of " + of + ": " + ids, Nearest.of(id, known));
  }

  /** Notes a time zone that does not exist, with the one that was probably meant. */
  void addUnknownZone(String key, String zone, Collection<String> known) {
    String expected = "a time zone such as Europe/London, or an offset such as +01:00";
    add(SurveyCode.UNKNOWN_ZONE, key, quote(zone), expected, Nearest.of(zone, known));
  }

  /** All problems in the order in which they were found. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Visits every entry of a list with its path. */
  static <T> void each(List<T> entries, String path, BiConsumer<T, String> visit) {
    for (int i = 0; i < entries.size(); i++) {
      visit.accept(entries.get(i), path + "[" + i + "]");
    }
  }

  /** A text in quotation marks. */
  public static String quote(String text) {
    return '"' + text + '"';
  }
}
