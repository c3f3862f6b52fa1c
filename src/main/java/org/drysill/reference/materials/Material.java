package org.drysill.reference.materials;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * A material of layers.
 *
 * @param name the word for it in a survey
 * @param aliases other words for it
 * @param conductivity thermal conductivity [W/(m·K)]; missing for air gaps and membranes
 * @param resistance thermal resistance [m²·K/W] whatever the thickness, for air gaps
 * @param vapourFactor vapour resistance factor [1]
 * @param sd vapour-equivalent air layer thickness [m] whatever the thickness, for membranes
 * @param source where it comes from
 */
public record Material(
    @Key(about = "The word for it in a survey", example = "mineral wool") String name,
    @Key(about = "Other words for it", example = "glass wool") List<String> aliases,
    @Key(about = "Thermal conductivity, W/(m·K)", example = "0.038") Optional<Spread> conductivity,
    @Key(about = "Thermal resistance whatever the thickness, m²·K/W", example = "0.18")
        Optional<Spread> resistance,
    @Key(about = "Vapour resistance factor", example = "10") Optional<Spread> vapourFactor,
    @Key(about = "Vapour-equivalent air layer thickness whatever the thickness, m", example = "2")
        Optional<Spread> sd,
    @Key(about = "Where it comes from") Citation source) {
  /** Copies the list. */
  public Material {
    aliases = List.copyOf(aliases);
  }

  /** True for the material that a word of a survey means. */
  public boolean isCalled(String word) {
    return name.equalsIgnoreCase(word) || aliases.stream().anyMatch(word::equalsIgnoreCase);
  }

  /** True where it counts the same whatever its thickness: membranes, paints, air gaps. */
  public boolean anyThickness() {
    return conductivity.isEmpty();
  }
}
