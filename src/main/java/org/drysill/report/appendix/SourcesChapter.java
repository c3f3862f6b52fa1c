package org.drysill.report.appendix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.drysill.assess.Figure;
import org.drysill.reference.Citation;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.rules.Documents;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Typeset;
import org.drysill.report.words.Words;

/** The documents, with what of them was used and how it is known. */
final class SourcesChapter implements Chapter {
  private static final Prose HOW_KNOWN =
      new Prose(
          List.of(),
          "",
          "",
          "Each document with the clauses used and how they are known. Seen: read in a public copy"
              + " of the document's own text. Memory: remembered and not read again, to be treated"
              + " as unconfirmed.");

  @Override
  public Optional<Section> write(Desk desk) {
    TreeMap<String, List<Citation>> documents = new TreeMap<>();
    for (Citation citation : all(desk)) {
      String name = citation.document() + citation.edition().map(e -> ", " + e).orElse("");
      documents.computeIfAbsent(name, n -> new ArrayList<>()).add(citation);
    }
    if (documents.isEmpty()) {
      return Optional.empty();
    }
    List<Entry> entries = new ArrayList<>();
    documents.forEach(
        (name, citations) -> entries.add(new Entry(name, clauses(citations), known(citations))));
    entries.addAll(Documents.of(desk));
    return Optional.of(
        new Section(
            "sources",
            "Where the published figures stand",
            "Sources",
            false,
            List.of(HOW_KNOWN, new Entries("", entries, ""))));
  }

  private static List<Citation> all(Desk desk) {
    List<Citation> all = new ArrayList<>(desk.found().citations());
    desk.index().shown().stream()
        .map(Figure::working)
        .flatMap(w -> w.sources().stream())
        .forEach(all::add);
    return all.stream().distinct().toList();
  }

  private static String clauses(List<Citation> citations) {
    return Typeset.of(
        String.join(
            "; ",
            citations.stream().flatMap(c -> c.clause().stream()).distinct().sorted().toList()));
  }

  private static String known(List<Citation> citations) {
    return Words.capital(
        String.join(
            ", ",
            citations.stream()
                .map(Citation::how)
                .distinct()
                .sorted(Comparator.naturalOrder())
                .map(h -> h.word())
                .toList()));
  }
}
