package org.drysill.reference.materials;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * All materials. A survey picks its layers from their words.
 *
 * @param materials the materials
 */
public record MaterialCatalogue(@Key(about = "The materials") List<Material> materials) {
  /** Copies the list. */
  public MaterialCatalogue {
    materials = List.copyOf(materials);
  }

  /** Reads the bundled table. */
  public static MaterialCatalogue bundled() {
    return DataFiles.read("materials/materials.yaml", MaterialCatalogue.class);
  }

  /** All words that a survey may use, names before aliases. */
  public List<String> words() {
    return Stream.concat(
            materials.stream().map(Material::name),
            materials.stream().flatMap(m -> m.aliases().stream()))
        .toList();
  }

  /** The material that a word of a survey means. */
  public Optional<Material> find(String word) {
    return materials.stream()
        .filter(m -> m.name().equalsIgnoreCase(word) || hasAlias(m, word))
        .findFirst();
  }

  private static boolean hasAlias(Material material, String word) {
    return material.aliases().stream().anyMatch(word::equalsIgnoreCase);
  }
}
