package org.drysill.report.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.reference.Citation;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.words.Numbers;

/**
 * Numbers the workings in the order in which the report first speaks of them. Figures by the same
 * formula share a number, so that the formula is printed once: w4, w4.2, w4.3. Figures that others
 * rest on follow, so that the appendix is complete.
 */
public final class WorkingIndex {
  private final Found found;
  private final Map<String, Figure> shown = new LinkedHashMap<>();
  private final Map<String, String> numbers = new LinkedHashMap<>();
  private final Map<Rule, Family> families = new LinkedHashMap<>();

  /** An index that knows the figures found. */
  public WorkingIndex(Found found) {
    this.found = found;
  }

  /** The number of a figure's working, such as {@code w12}; its next free one at first sight. */
  public String mark(Figure figure) {
    shown.putIfAbsent(figure.id(), figure);
    return numbers.computeIfAbsent(figure.id(), id -> number(figure));
  }

  /** The number of a figure's working; empty where the report has not led to it yet. */
  Optional<String> known(Figure figure) {
    return Optional.ofNullable(numbers.get(figure.id()));
  }

  private String number(Figure figure) {
    Working working = figure.working();
    return families
        .computeIfAbsent(Rule.of(working), rule -> new Family(families.size() + 1))
        .take(figure, working);
  }

  /** The figures that have a number, in the order in which they got it. */
  public List<Figure> shown() {
    return new ArrayList<>(shown.values());
  }

  /** The workings in the order of their numbers; to be asked for when every page is written. */
  public List<WorkingFamily> families(Numbers words) {
    numberInputs();
    FamilyWords writer =
        new FamilyWords(words, input -> input.figure().flatMap(found::figure).map(this::mark));
    return families.values().stream().map(writer::of).toList();
  }

  /** Gives a number to whatever the numbered figures rest on, and so on to the last of them. */
  private void numberInputs() {
    for (int i = 0; i < shown.size(); i++) {
      Figure figure = new ArrayList<>(shown.values()).get(i);
      for (Working.Input input : figure.working().inputs()) {
        input.figure().flatMap(found::figure).ifPresent(this::mark);
      }
    }
  }

  /** What figures of one family share: readings and printed figures their note, too. */
  private record Rule(String formula, List<Citation> sources, Optional<String> note) {
    static Rule of(Working working) {
      return new Rule(
          working.formula(),
          working.sources(),
          working.inputs().isEmpty() ? working.note().map(Rule::withoutFigures) : Optional.empty());
    }

    /** A note that quotes its own figure is not one of a family. */
    private static String withoutFigures(String note) {
      return note.chars().anyMatch(Character::isDigit) ? "" : note;
    }
  }
}
