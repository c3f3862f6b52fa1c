package org.drysill.reference.surfaces;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The temperature factor below which a national document sees a risk of mould in dwellings.
 *
 * @param jurisdictions ids of the rule sets whose country it belongs to
 * @param value the factor
 * @param source where it comes from
 */
public record CriticalFactor(
    @Key(about = "Rule sets whose country it belongs to", example = "england")
        List<String> jurisdictions,
    @Key(about = "The factor", example = "0.75") Quantity value,
    @Key(about = "Where it comes from") Citation source) {
  /** Copies the list. */
  public CriticalFactor {
    jurisdictions = List.copyOf(jurisdictions);
  }
}
