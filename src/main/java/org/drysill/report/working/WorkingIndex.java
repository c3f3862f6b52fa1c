package org.drysill.report.working;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.reference.Citation;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

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
    Set<String> explained = new HashSet<>();
    List<WorkingFamily> all = new ArrayList<>();
    families.forEach((rule, family) -> all.add(family(rule, family, words, explained)));
    return all;
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

  private WorkingFamily family(Rule rule, Family family, Numbers words, Set<String> explained) {
    List<Family.Member> members = family.members();
    Notes notes = new Notes(members);
    Set<String> named = new HashSet<>();
    List<WorkingEntry> entries = new ArrayList<>();
    for (Family.Member member : members) {
      List<String> inputs = new ArrayList<>();
      for (Working.Input input : member.working().inputs()) {
        inputs.add(input(input, words, explained, named));
      }
      entries.add(entry(member, words, inputs, notes.own(entries.size())));
    }
    return new WorkingFamily(
        family.number(), rule.formula(), Sources.of(rule.sources()), notes.common(), entries);
  }

  private static WorkingEntry entry(
      Family.Member member, Numbers words, List<String> inputs, String note) {
    Figure figure = member.figure();
    return new WorkingEntry(
        member.number(),
        Words.capital(figure.name()),
        words.worked(figure.value(), figure.unit()),
        figure.basis() == Basis.CALCULATED ? "" : Words.basis(figure.basis()),
        String.join("; ", inputs),
        note);
  }

  /**
   * An input; its name where its symbol was not told yet, or where no working names it and the
   * family has not named it so before.
   */
  private String input(
      Working.Input input, Numbers words, Set<String> explained, Set<String> named) {
    Optional<String> number = input.figure().flatMap(found::figure).map(this::mark);
    String value = input.symbol() + " = " + words.worked(input.value(), input.unit());
    String where = number.orElse(Words.basis(input.basis()));
    boolean first = explained.add(symbol(input) + " " + kind(input));
    boolean unnamed = named.add(symbol(input) + " " + input.name()) && number.isEmpty();
    return value + (first || unnamed ? ", " + input.name() + ", " + where : " (" + where + ")");
  }

  /** The symbol without the room that it is of. */
  private static String symbol(Working.Input input) {
    int of = input.symbol().indexOf('(');
    return of < 0 ? input.symbol() : input.symbol().substring(0, of);
  }

  /** The first words of a name, which say what kind of figure a symbol stands for. */
  private static String kind(Working.Input input) {
    String[] words = input.name().split(" ", 3);
    return words.length < 3 ? input.name() : words[0] + " " + words[1];
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
