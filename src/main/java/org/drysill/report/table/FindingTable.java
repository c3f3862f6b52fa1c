package org.drysill.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Note;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Findings as rows: provided, asked, a bar with range and requirement, the verdict. */
public final class FindingTable {
  private static final int ASKED_MM = 15;
  private static final int BAR_MM = 20;

  private FindingTable() {}

  /** The table of findings, with notes beside it for as many workings as fit. */
  public static Grid of(Desk desk, String title, List<Finding> findings) {
    return of(desk, title, findings, notes(desk, findings, findings.size() + 1));
  }

  /** The table of findings with notes of its own. */
  public static Grid of(Desk desk, String title, List<Finding> findings, List<Note> notes) {
    List<String> units = findings.stream().map(f -> unit(desk.numbers(), f)).toList();
    String unit = units.stream().distinct().count() == 1 ? units.get(0) : "";
    List<String> labels = Labels.of(findings.stream().map(Finding::subject).toList());
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      String own = unit.isEmpty() ? units.get(i) : "";
      String label = Words.capital(Words.shortened(labels.get(i), 90));
      rows.add(row(desk.numbers(), findings.get(i), own.isEmpty() ? label : label + ", " + own));
    }
    return new Grid(
        notes,
        title,
        List.of(
            Cells.words(""),
            Cells.numbers(unit.isEmpty() ? "found" : "found, " + unit, 27),
            Cells.numbers("asked", ASKED_MM),
            Cells.words("range and requirement", BAR_MM),
            Cells.words("verdict", 20)),
        rows,
        "");
  }

  /** Notes that lead to the workings of what is provided and what is asked. */
  public static List<Note> notes(Desk desk, List<Finding> findings, int most) {
    List<Optional<Figure>> figures = new ArrayList<>();
    for (Finding finding : findings) {
      figures.add(finding.provided());
      figures.add(finding.required());
    }
    List<Optional<Figure>> first =
        figures.stream().filter(Optional::isPresent).distinct().limit(most).toList();
    return desk.notes(first);
  }

  private static Row row(Numbers numbers, Finding finding, String label) {
    return Cells.row(
        Cells.text(label),
        provided(numbers, finding),
        required(numbers, finding),
        bar(numbers, finding),
        Cells.verdict(finding.verdict()));
  }

  private static String unit(Numbers numbers, Finding finding) {
    return finding.required().or(finding::provided).map(f -> numbers.unit(f.unit())).orElse("");
  }

  private static Cell provided(Numbers numbers, Finding finding) {
    return finding
        .provided()
        .map(f -> Cells.value(numbers, f.value(), f.unit(), towardsFailing(finding)))
        .orElse(Cells.text(Cells.NOTHING));
  }

  /** What is asked; with its bounds where they are why the two cannot be told apart. */
  private static Cell required(Numbers numbers, Finding finding) {
    Rounding rounding = towardsFailing(finding) == Rounding.DOWN ? Rounding.UP : Rounding.DOWN;
    return finding
        .required()
        .map(
            f ->
                finding.verdict() == Verdict.UNKNOWN
                    ? Cells.value(numbers, f.value(), f.unit(), rounding)
                    : Cells.text(numbers.plain(f.likely(), f.unit(), rounding)))
        .orElse(Cells.text(Cells.NOTHING));
  }

  /** What must reach a limit is rounded down, what must stay below one is rounded up. */
  static Rounding towardsFailing(Finding finding) {
    return finding.direction().limitsFromAbove() ? Rounding.UP : Rounding.DOWN;
  }

  private static Cell bar(Numbers numbers, Finding finding) {
    return Cells.bar(
        finding
            .provided()
            .filter(f -> f.unit() != Unit.CELSIUS)
            .flatMap(
                f ->
                    Bars.of(
                        f.value(),
                        finding.required().map(Figure::likely),
                        numbers.full(f)
                            + finding.required().map(r -> " of " + numbers.likely(r)).orElse(""))));
  }
}
