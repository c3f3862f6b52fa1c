package org.drysill.reference.glazing;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * A kind of glazing.
 *
 * @param name the word for it in a survey
 * @param aliases other words for it
 * @param called what sentences call it; its name with "glazing" where missing
 * @param ug thermal transmittance of the middle of the pane [W/(m²·K)]
 * @param edge temperature factor of the lower edge in a frame of wood or plastic; missing where
 *     there is no spacer and the middle decides
 * @param source where it comes from
 * @param note what else the reader should know
 */
public record Glazing(
    @Key(about = "The word for it in a survey", example = "double low-e") String name,
    @Key(about = "Other words for it", example = "coated double") List<String> aliases,
    @Key(about = "What sentences call it", example = "a single pane") Optional<String> called,
    @Key(about = "Thermal transmittance of the middle of the pane, W/(m²·K)", example = "1.4")
        Spread ug,
    @Key(about = "Temperature factor of the lower edge in wood or plastic", example = "0.45..0.60")
        Optional<Spread> edge,
    @Key(about = "Where it comes from") Citation source,
    @Key(about = "What else the reader should know", example = "The outer pane is colder")
        Optional<String> note) {
  /** Copies the list. */
  public Glazing {
    aliases = List.copyOf(aliases);
  }

  /** What sentences call it. */
  public String words() {
    return called.orElse(name + " glazing");
  }
}
