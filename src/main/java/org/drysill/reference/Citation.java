package org.drysill.reference;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * Where a figure comes from.
 *
 * @param document the document's own name
 * @param edition its edition or year
 * @param clause clause, table or equation
 * @param how how the figure is known
 */
public record Citation(
    @Key(about = "The document's own name", example = "Approved Document F Volume 1")
        String document,
    @Key(about = "Edition or year", example = "2021") Optional<String> edition,
    @Key(about = "Clause, table or equation", example = "Table 1.3") Optional<String> clause,
    @Key(about = "seen, memory, derived, assumption or common practice", example = "seen")
        How how) {

  /** A citation with all its parts. */
  public static Citation of(String document, String edition, String clause, How how) {
    return new Citation(document, Optional.of(edition), Optional.of(clause), how);
  }

  /** Document, edition and clause in one line, such as {@code ISO 13788:2012, Annex E}. */
  public String text() {
    return document + edition.map(e -> ", " + e).orElse("") + clause.map(c -> ", " + c).orElse("");
  }
}
