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
    return words(materials);
  }

  /** The words of materials that count the same whatever their thickness. */
  public List<String> wordsOfAnyThickness() {
    return words(materials.stream().filter(Material::anyThickness).toList());
  }

  private static List<String> words(List<Material> some) {
    return Stream.concat(
            some.stream().map(Material::name), some.stream().flatMap(m -> m.aliases().stream()))
        .toList();
  }

  /** The material that a word of a survey means. */
  public Optional<Material> find(String word) {
    return materials.stream().filter(m -> m.isCalled(word)).findFirst();
  }
}
