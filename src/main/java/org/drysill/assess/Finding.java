package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;

/**
 * What a comparison gave. There is one for every comparison, passes and "not assessed" too.
 *
 * @param id stable id, such as {@code ventilation.whole_home}
 * @param subject what was compared, such as {@code Whole home} or {@code Kitchen extract}
 * @param room the id of the room that it is about, if it is about one
 * @param verdict the result
 * @param direction which way what is there is held against what is asked
 * @param provided what is there
 * @param required what is asked
 * @param because the reason in plain words: its first sentence compares, any others remark on it
 * @param settledBy the reading that would settle an unknown, as an instruction
 * @param sources where what is asked is printed
 */
public record Finding(
    String id,
    String subject,
    Optional<String> room,
    Verdict verdict,
    Direction direction,
    Optional<Figure> provided,
    Optional<Figure> required,
    String because,
    Optional<String> settledBy,
    List<Citation> sources) {
  /** Copies the list. */
  public Finding {
    sources = List.copyOf(sources);
  }

  /** What the reason says beyond the comparison itself; empty where it says no more. */
  public String remark() {
    int end = because.indexOf(". ");
    return end < 0 ? "" : because.substring(end + 2).strip();
  }
}
