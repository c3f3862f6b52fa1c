package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * Areas of background ventilators for one way of ventilating a home.
 *
 * @param id short name
 * @param strategy the way of ventilating
 * @param situation when it is asked for, in one sentence
 * @param general yes for the rule that holds without any work being done
 * @param areas areas by kind of room
 * @param count least number of ventilators
 * @param notValidWhen when the rule does not hold and advice is asked for
 */
public record BackgroundRule(
    @Key(about = "Short name", example = "natural") String id,
    @Key(about = "The way of ventilating", example = "natural") Strategy strategy,
    @Key(about = "When it is asked for, in one sentence") String situation,
    @Key(about = "Yes for the rule that holds without any work being done", example = "yes")
        boolean general,
    @Key(about = "Areas by kind of room") List<BackgroundArea> areas,
    @Key(about = "Least number of ventilators") Optional<VentilatorCount> count,
    @Key(about = "When the rule does not hold and advice is asked for") List<String> notValidWhen) {
  /** Copies the lists. */
  public BackgroundRule {
    areas = List.copyOf(areas);
    notValidWhen = List.copyOf(notValidWhen);
  }
}
