package org.drysill.reference.limits;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * A limit of time.
 *
 * @param what what is to be done
 * @param hazard the class of hazard that it is for; empty for every one
 * @param from the event from which it counts
 * @param until the event that ends it
 * @param within how many units
 * @param unit hours, working days or weeks
 */
public record TimeLimit(
    @Key(about = "What is to be done", example = "Investigate") String what,
    @Key(about = "The class of hazard that it is for", example = "emergency")
        Optional<String> hazard,
    @Key(about = "The event from which it counts", example = "reported") String from,
    @Key(about = "The event that ends it", example = "investigated") String until,
    @Key(about = "How many units", min = 1, max = 1000, example = "10") int within,
    @Key(about = "Hours, working days or weeks", example = "working days") LimitUnit unit) {
  /** How long it is, such as {@code 10 working days}. */
  public String length() {
    return within + "\u00a0" + unit.word();
  }

  /** True where it is for a class of hazard. */
  public boolean isFor(String kind) {
    return hazard.map(kind::equals).orElse(true);
  }
}
