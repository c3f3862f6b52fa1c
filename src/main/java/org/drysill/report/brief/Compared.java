package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.report.block.Bar;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Bars;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Rounding;

/** Findings as rows: what is there, what is asked, on what it rests, the verdict. */
final class Compared {
  private static final int BAR_MM = 24;

  private Compared() {}

  /** A table across the page. */
  static Grid of(BriefDesk desk, String title, List<Finding> findings) {
    List<Row> rows = new ArrayList<>();
    findings.forEach(f -> rows.add(row(desk, f)));
    return Grid.wide(
        title,
        List.of(
            Cells.words(desk.say("compared.what")),
            Cells.numbers(desk.say("compared.found"), 31),
            Cells.numbers(desk.say("compared.asked"), 18),
            Cells.words(desk.say("compared.range"), BAR_MM),
            Cells.words(desk.say("compared.basis"), 22),
            Cells.words(desk.say("compared.verdict"), 26)),
        rows,
        "");
  }

  private static Row row(BriefDesk desk, Finding finding) {
    Rounding failing = failing(finding);
    return Cells.row(
        Cells.text(label(desk, finding)),
        finding.provided().map(f -> desk.value(f, failing)).orElse(nothing()),
        finding
            .required()
            .map(
                f ->
                    Cells.text(desk.numbers().plain(f.likely(), f.unit(), other(failing)))
                        .with(List.of(desk.mark(f))))
            .orElse(nothing()),
        Cells.bar(finding.provided().flatMap(f -> bar(desk, finding, f))),
        Cells.text(finding.provided().map(desk::basis).orElse(Cells.NOTHING)),
        verdict(desk, finding.verdict()));
  }

  private static Cell nothing() {
    return Cells.text(Cells.NOTHING);
  }

  private static String label(BriefDesk desk, Finding finding) {
    String name = desk.terms().finding(finding);
    return finding
        .required()
        .or(finding::provided)
        .map(f -> desk.numbers().unit(f.unit()))
        .filter(unit -> !unit.isEmpty())
        .map(unit -> name + ", " + unit.replace(' ', '\u00a0'))
        .orElse(name);
  }

  private static Optional<Bar> bar(BriefDesk desk, Finding finding, Figure found) {
    if (found.unit() == Unit.CELSIUS) {
      return Optional.empty();
    }
    String words =
        finding
            .required()
            .map(
                asked ->
                    desk.say(
                        "compared.bar", desk.numbers().full(found), desk.numbers().asked(asked)))
            .orElseGet(() -> desk.numbers().full(found));
    return Bars.of(found.value(), finding.required().map(Figure::likely), words);
  }

  /** What must reach a limit is rounded down, what must stay below one is rounded up. */
  private static Rounding failing(Finding finding) {
    return finding.direction().limitsFromAbove() ? Rounding.UP : Rounding.DOWN;
  }

  private static Rounding other(Rounding rounding) {
    return rounding == Rounding.DOWN ? Rounding.UP : Rounding.DOWN;
  }

  /** The mark of a verdict and its word. */
  static Cell verdict(BriefDesk desk, Verdict verdict) {
    return new Cell(
        word(desk, verdict),
        "",
        verdict.name().toLowerCase(Locale.ROOT),
        Optional.empty(),
        List.of());
  }

  static String word(BriefDesk desk, Verdict verdict) {
    return desk.terms().word("judged", verdict);
  }
}
