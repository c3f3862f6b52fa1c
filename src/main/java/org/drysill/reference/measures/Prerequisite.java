package org.drysill.reference.measures;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * What must be so before a measure.
 *
 * <p>Without conditions it is looked at on site and printed with the measure. With conditions it
 * asks for something only where all of them hold: then one of the named measures must be done
 * before or together with this one, and where none is named the measure has no place in a package.
 *
 * @param says what must be so, in a sentence
 * @param when the defect that stands in its way, by the words of conditions
 * @param by the ids of measures that mend that defect, each of them enough
 * @param anywhere true where it is enough to have it anywhere in the home, and not at the place
 */
public record Prerequisite(
    @Key(about = "What must be so, in a sentence") String says,
    @Key(about = "The defect in its way", example = "[transfer not met]") List<Condition> when,
    @Key(
            about = "Measures of which one mends it",
            example = "[door-undercut]",
            vocabulary = "measure id")
        List<String> by,
    @Key(about = "Enough anywhere in the home", example = "no") Optional<Boolean> anywhere) {
  /** Copies the lists. */
  public Prerequisite {
    when = List.copyOf(when);
    by = List.copyOf(by);
  }

  /** True where only someone on site can tell. */
  public boolean isForTheSite() {
    return when.isEmpty();
  }
}
