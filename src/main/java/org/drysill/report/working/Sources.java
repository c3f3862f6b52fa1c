package org.drysill.report.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** Citations in words: a document is named once, with all its clauses behind it. */
public final class Sources {
  private Sources() {}

  /** A citation with its standing where it was not read in the source's own text. */
  public static String of(Citation citation) {
    return citation.text() + standing(citation.how());
  }

  /** Citations, those of one document and one standing together, in the order of their first. */
  static List<String> of(List<Citation> citations) {
    Map<Citation, List<String>> documents = new LinkedHashMap<>();
    for (Citation citation : citations) {
      Citation document =
          new Citation(citation.document(), citation.edition(), Optional.empty(), citation.how());
      List<String> clauses = documents.computeIfAbsent(document, d -> new ArrayList<>());
      citation.clause().ifPresent(clauses::add);
    }
    List<String> words = new ArrayList<>();
    documents.forEach(
        (document, clauses) -> {
          String behind = clauses.isEmpty() ? "" : ", " + String.join("; ", clauses);
          words.add(document.text() + behind + standing(document.how()));
        });
    return words;
  }

  private static String standing(How how) {
    return how == How.SEEN ? "" : " (" + how.word() + ")";
  }
}
