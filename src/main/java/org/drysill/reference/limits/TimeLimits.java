package org.drysill.reference.limits;

import java.time.LocalDate;
import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * The limits of one law.
 *
 * @param name what they are called in sentences
 * @param jurisdictions the rule sets of whose place they are the law
 * @param tenures the tenures that they are for
 * @param binds whom they bind
 * @param inForce the day from which they bind
 * @param covers what they are about
 * @param exceptions what can stand against them
 * @param source where they stand
 * @param holidays what are no working days
 * @param limits the limits
 */
public record TimeLimits(
    @Key(about = "What they are called in sentences") String name,
    @Key(about = "The rule sets of whose place they are the law", required = true)
        List<String> jurisdictions,
    @Key(about = "The tenures that they are for", required = true) List<String> tenures,
    @Key(about = "Whom they bind") String binds,
    @Key(about = "The day from which they bind", example = "2025-10-27") LocalDate inForce,
    @Key(about = "What they are about") String covers,
    @Key(about = "What can stand against them") String exceptions,
    @Key(about = "Where they stand") Citation source,
    @Key(about = "What are no working days") PublicHolidays holidays,
    @Key(about = "The limits", required = true) List<TimeLimit> limits) {
  /** Copies the lists. */
  public TimeLimits {
    jurisdictions = List.copyOf(jurisdictions);
    tenures = List.copyOf(tenures);
    limits = List.copyOf(limits);
  }

  /** All that is bundled. */
  public static List<TimeLimits> all() {
    return DataFiles.readAll("limits", TimeLimits.class);
  }
}
