package org.drysill.report.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/**
 * Numbers the workings in the order in which the report first speaks of them: w1, w2 and so on.
 * Figures that others rest on follow, so that the appendix is complete.
 */
public final class WorkingIndex {
  private final Found found;
  private final Map<String, Figure> numbered = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  /** An index that knows the figures found. */
  public WorkingIndex(Found found) {
    this.found = found;
  }

  /** The number of a figure's working, such as {@code w12}; its next free one at first sight. */
  public String mark(Figure figure) {
    numbered.putIfAbsent(figure.id(), figure);
    return "w" + numbers.computeIfAbsent(figure.id(), id -> numbers.size() + 1);
  }

  /** The figures that have a number, in the order of their numbers. */
  public List<Figure> shown() {
    return new ArrayList<>(numbered.values());
  }

  /** The workings in the order of their numbers; to be asked for when every page is written. */
  public List<WorkingEntry> entries(Numbers words) {
    List<WorkingEntry> entries = new ArrayList<>();
    while (entries.size() < numbered.size()) {
      Figure next = new ArrayList<>(numbered.values()).get(entries.size());
      entries.add(entry(next, words));
    }
    return entries;
  }

  private WorkingEntry entry(Figure figure, Numbers words) {
    Working working = figure.working();
    return new WorkingEntry(
        mark(figure),
        Words.capital(figure.name()),
        words.full(figure),
        Words.basis(figure.basis()),
        working.formula(),
        working.inputs().stream().map(i -> input(i, words)).toList(),
        working.sources().stream().map(WorkingIndex::source).toList(),
        working.note().orElse(""));
  }

  private String input(Working.Input input, Numbers words) {
    Optional<String> where = input.figure().flatMap(found::figure).map(this::mark);
    return input.symbol()
        + " = "
        + words.full(input.value(), input.unit())
        + ", "
        + input.name()
        + ", "
        + where.orElse(Words.basis(input.basis()));
  }

  /** A citation with its standing where it was not read in the source's own text. */
  public static String source(Citation citation) {
    return citation.text() + (citation.how() == How.SEEN ? "" : " (" + citation.how().word() + ")");
  }
}
