package org.drysill.report.brief;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * Citations at a figure or an assumption, without what their clauses are about, which the list of
 * sources tells.
 */
final class Cited {
  private static final int LONGEST_CLAUSE = 24;

  private Cited() {}

  /** One citation. */
  static String one(BriefDesk desk, Citation citation) {
    return said(desk, List.of(citation));
  }

  /** Several, the clauses of one document after its title. */
  static List<String> together(BriefDesk desk, List<Citation> citations) {
    Map<String, List<Citation>> documents =
        citations.stream()
            .collect(
                Collectors.groupingBy(
                    c -> c.how() + (isPublished(c) ? title(c) : ""),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return documents.values().stream().map(same -> said(desk, same)).toList();
  }

  /** Arithmetic and the program's own assumptions are no documents. */
  static boolean isPublished(Citation citation) {
    return citation.how() == How.SEEN || citation.how() == How.MEMORY;
  }

  static String title(Citation citation) {
    return citation.document() + citation.edition().map(e -> ", " + e).orElse("");
  }

  /** Citations of one document; what is none by its standing alone. */
  private static String said(BriefDesk desk, List<Citation> same) {
    Citation first = same.get(0);
    String standing = desk.terms().word("how", first.how());
    if (!isPublished(first)) {
      return standing;
    }
    String title =
        Stream.concat(
                Stream.of(title(first)), same.stream().map(Cited::clause).flatMap(Optional::stream))
            .distinct()
            .collect(Collectors.joining(", "));
    return first.how() == How.MEMORY ? title + " (" + standing + ")" : title;
  }

  private static Optional<String> clause(Citation citation) {
    return citation
        .clause()
        .map(c -> c.split("[,;:]", 2)[0].strip())
        .filter(c -> c.length() <= LONGEST_CLAUSE);
  }
}
