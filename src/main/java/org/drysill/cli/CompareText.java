package org.drysill.cli;

import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.ChangeResult;
import org.drysill.report.compared.ComparedGroup;
import org.drysill.report.compared.ComparedRow;
import org.drysill.report.compared.Comparison;
import org.drysill.report.compared.Statement;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Prints what changed as a table in words. */
final class CompareText {
  private static final String GAP = "  ";
  private static final int LABEL = 34;

  private final Console console;
  private final Assessment assessment;
  private final ChangeResult change;
  private final Numbers numbers;

  /** For an assessment that has an earlier visit. */
  CompareText(Console console, Assessment assessment) {
    this.console = console;
    this.assessment = assessment;
    this.change = assessment.change().orElseThrow();
    this.numbers = Desk.numbers(assessment);
  }

  void print() {
    Statement statement = new Statement(change, numbers);
    if (change.sameHome().verdict() != Verdict.MEETS) {
      say(console.strong("One home?") + " " + Words.sentence(change.sameHome().said()));
    }
    change.home().ifPresent(home -> said("Compared are ", home.from()));
    say(Words.sentence(change.outdoor().said()));
    say(statement.plain());
    table(Comparison.of(change, numbers, this::room));
    said("Between the visits: ", statement.between());
    said("Came out otherwise: ", statement.verdicts().strip());
    change.notCompared().forEach(line -> said("Not compared: ", line));
    say(change.caution());
  }

  private void table(List<ComparedGroup> groups) {
    Columns columns = Columns.of(groups);
    console.say("");
    line(
        columns,
        "",
        Words.date(change.before()),
        Words.date(change.after()),
        "change",
        console.strong("shown"));
    for (ComparedGroup group : groups) {
      console.say(console.strong(group.title()));
      group.rows().forEach(row -> row(columns, row));
    }
    console.say("");
  }

  private void row(Columns columns, ComparedRow row) {
    line(
        columns,
        GAP + Words.shortened(row.label(), LABEL - GAP.length()),
        row.before().line(),
        row.after().line(),
        row.change().line(),
        row.judgement().words() + row.judgement().doubt().map(d -> ": " + d.words()).orElse(""));
  }

  private void line(
      Columns columns, String label, String before, String after, String change, String shown) {
    say(
        padded(label, LABEL)
            + GAP
            + padded(before, columns.before())
            + GAP
            + padded(after, columns.after())
            + GAP
            + padded(change, columns.change())
            + GAP
            + shown);
  }

  /** How wide the columns of numbers are, by the longest of their entries. */
  private record Columns(int before, int after, int change) {
    private static final int DATE = 17;

    static Columns of(List<ComparedGroup> groups) {
      int before = DATE;
      int after = DATE;
      int change = 0;
      for (ComparedGroup group : groups) {
        for (ComparedRow row : group.rows()) {
          before = Math.max(before, length(row.before().line()));
          after = Math.max(after, length(row.after().line()));
          change = Math.max(change, length(row.change().line()));
        }
      }
      return new Columns(before, after, change);
    }
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - length(text)));
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private void said(String head, String text) {
    if (!text.isEmpty()) {
      say(Words.sentence(head + text));
    }
  }

  /** A no-break space is of no use where nothing breaks lines. */
  private void say(String text) {
    console.say(text.replace(Numbers.JOIN, " "));
  }

  private String room(String id) {
    return assessment.home().room(id).map(RoomFacts::name).orElse(id);
  }
}
