package org.drysill.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.yaml.ProblemList.Finding;

/** Reads texts: any text, an id, a word of a vocabulary, the path of a file. */
final class TextReader {
  private final Complaints complaints;
  private final Vocabularies vocabularies;
  private final Folder folder;
  private final Map<String, Place> ids = new LinkedHashMap<>();

  TextReader(Complaints complaints, Vocabularies vocabularies, Folder folder) {
    this.complaints = complaints;
    this.vocabularies = vocabularies;
    this.folder = folder;
  }

  /** The text; a word of a vocabulary in the vocabulary's own spelling; empty after a complaint. */
  Optional<Object> read(String text, Spot spot) {
    Key key = spot.key();
    if (key.file()) {
      return path(text, spot);
    }
    if (key.id()) {
      return id(text, spot);
    }
    List<String> words = vocabularies.of(key.vocabulary());
    if (key.vocabulary().isEmpty() || words.isEmpty()) {
      return Optional.of(text);
    }
    String folded = Nearest.fold(text);
    return words.stream()
        .filter(word -> folded.equals(Nearest.fold(word)))
        .findFirst()
        .<Object>map(word -> word)
        .or(() -> notInTable(text, words, spot));
  }

  private Optional<Object> notInTable(String text, List<String> words, Spot spot) {
    String expected = Expectation.about(spot.key()) + "one of " + Expectation.some(words);
    return complaints.add(
        YamlCode.NOT_IN_TABLE, spot, Finding.quoted(text, expected).meant(Nearest.of(text, words)));
  }

  private Optional<Object> path(String text, Spot spot) {
    Optional<Folder.Refusal> refusal = folder.refusal(text);
    refusal.ifPresent(r -> complaints.add(r.code(), spot, r.finding()));
    return refusal.isPresent() ? Optional.empty() : Optional.of(text);
  }

  private Optional<Object> id(String text, Spot spot) {
    Place first = ids.putIfAbsent(text, complaints.place(spot));
    if (first != null) {
      return complaints.add(
          YamlCode.DUPLICATE_ID,
          spot,
          Finding.quoted(
              text, "an id of its own; this one is already used on line " + first.line()));
    }
    return Optional.of(text);
  }
}
