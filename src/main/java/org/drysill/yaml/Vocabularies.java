package org.drysill.yaml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The words that a text may be, by the name of the vocabulary that {@link Key#vocabulary} gives.
 *
 * @param words the words of each vocabulary, in the order in which help shows them
 */
public record Vocabularies(Map<String, List<String>> words) {
  /** Copies the map in its order. */
  public Vocabularies {
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  /** No vocabulary at all: every text passes. */
  public static Vocabularies none() {
    return new Vocabularies(Map.of());
  }

  /** The same with other words for one of them. */
  public Vocabularies with(String name, List<String> other) {
    Map<String, List<String>> all = new LinkedHashMap<>(words);
    all.put(name, other);
    return new Vocabularies(all);
  }

  /** The words of a vocabulary; empty where it is not known, and then every text passes. */
  public List<String> of(String name) {
    return words.getOrDefault(name, List.of());
  }
}
