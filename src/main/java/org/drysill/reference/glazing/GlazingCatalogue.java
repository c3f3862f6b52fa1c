package org.drysill.reference.glazing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * All that is known of windows. Its names are the vocabulary {@code glazing} of a survey.
 *
 * @param kinds the kinds of glazing
 * @param upgrades names of the kinds that panes are compared with
 * @param edges how metal frames move the edge
 * @param spacers linear thermal transmittances
 * @param frames thermal transmittances of frames
 */
public record GlazingCatalogue(
    @Key(about = "The kinds of glazing") List<Glazing> kinds,
    @Key(about = "Names of the kinds that panes are compared with", example = "triple low-e")
        List<String> upgrades,
    @Key(about = "How metal frames move the edge") GlassEdges edges,
    @Key(about = "Linear thermal transmittances") List<SpacerPsi> spacers,
    @Key(about = "Thermal transmittances of frames") List<FrameU> frames) {
  /** The word for glazing that nobody looked at. */
  public static final String UNKNOWN = "unknown";

  /** Copies the lists. */
  public GlazingCatalogue {
    kinds = List.copyOf(kinds);
    upgrades = List.copyOf(upgrades);
    spacers = List.copyOf(spacers);
    frames = List.copyOf(frames);
  }

  /** Reads the bundled table. */
  public static GlazingCatalogue bundled() {
    return DataFiles.read("glazing/glazing.yaml", GlazingCatalogue.class);
  }

  /** All words that a survey may use, names before aliases. */
  public List<String> words() {
    return Stream.concat(
            kinds.stream().map(Glazing::name), kinds.stream().flatMap(k -> k.aliases().stream()))
        .toList();
  }

  /** The kind that a word of a survey means. */
  public Optional<Glazing> find(String word) {
    return kinds.stream()
        .filter(k -> k.name().equalsIgnoreCase(word) || hasAlias(k, word))
        .findFirst();
  }

  /**
   * The kinds that panes are compared with.
   *
   * @throws IllegalStateException where one of them is no kind
   */
  public List<Glazing> upgradeKinds() {
    return upgrades.stream()
        .map(u -> find(u).orElseThrow(() -> new IllegalStateException("no glazing " + u)))
        .toList();
  }

  /** The kind to take where nobody looked. */
  public Glazing unknown() {
    return find(UNKNOWN).orElseThrow();
  }

  /**
   * The frame of a material.
   *
   * @throws IllegalArgumentException for a material that the table lacks
   */
  public FrameU frame(String material) {
    return frames.stream()
        .filter(f -> f.frame().equals(material))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no frame of " + material));
  }

  private static boolean hasAlias(Glazing kind, String word) {
    return kind.aliases().stream().anyMatch(word::equalsIgnoreCase);
  }
}
