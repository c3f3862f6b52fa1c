package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.options.Chance;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;

/** The best packages of measures: what they cost, how sure they are, what remains. */
final class PackageSection implements BriefChapter {
  private static final int PERCENT = 100;
  private static final int COLUMN_MM = 19;

  @Override
  public Optional<Section> write(BriefDesk desk) {
    return desk.subject().options().packages().map(found -> section(desk, found));
  }

  private static Section section(BriefDesk desk, PackagesResult found) {
    List<Block> blocks = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    rows.add(row(desk, desk.say("packages.today"), found.today()));
    List<MeasurePackage> shown = new ArrayList<>(found.best());
    found.onceTested().ifPresent(shown::add);
    found.beyondBudget().ifPresent(shown::add);
    found.dryGlass().ifPresent(shown::add);
    shown.forEach(p -> rows.add(row(desk, name(desk, p), p)));
    blocks.add(
        Grid.wide(
                "",
                List.of(
                    Cells.words(desk.say("packages.package"), 23),
                    desk.numbers("packages.first", Unit.MONEY, 36),
                    desk.numbers("packages.yearly", Unit.MONEY, 34),
                    Cells.words(desk.say("packages.chance"), 27),
                    Cells.numbers(
                        desk.say("packages.lacks", desk.numbers().unit(Unit.AIRFLOW)), 22),
                    Cells.numbers(desk.say("packages.mould"), 20),
                    Cells.numbers(desk.say("packages.glass"), 0)),
                rows,
                desk.say("packages.foot"))
            .densely());
    if (!shown.isEmpty()) {
      blocks.add(measures(desk, shown));
    }
    if (found.best().isEmpty()) {
      blocks.add(new Prose(List.of(), "", "", desk.say("packages.none")));
    }
    return new Section(
        "packages",
        found.best().stream()
            .findFirst()
            .map(
                best ->
                    desk.say(
                        best.reaches() ? "packages.heading.all" : "packages.heading.part",
                        best.name(),
                        Long.toString(best.closedPercent()),
                        desk.numbers().money(best.firstCost())))
            .orElseGet(() -> desk.say("packages.heading.none")),
        desk.say("packages.running"),
        false,
        blocks);
  }

  private static String name(BriefDesk desk, MeasurePackage found) {
    return desk.phrases().find("package." + found.name()).orElse(found.name());
  }

  private static Row row(BriefDesk desk, String name, MeasurePackage found) {
    boolean today = found.steps().isEmpty();
    return Cells.row(
        Cells.text(name),
        today ? Cells.text(Cells.NOTHING) : desk.value(found.firstCost()),
        today ? Cells.text(Cells.NOTHING) : desk.value(found.annualCost()),
        today ? Cells.text(Cells.NOTHING) : Cells.text(chance(found.spread().enough())),
        Cells.text(desk.numbers().plain(found.lacks())).with(List.of(desk.mark(found.lacks()))),
        Cells.text(Integer.toString(found.mouldMonths())),
        Cells.text(Integer.toString(found.wetGlassMonths())));
  }

  private static String chance(Chance chance) {
    return Math.round(PERCENT * chance.share())
        + "\u00a0±\u00a0"
        + Math.round(PERCENT * chance.error())
        + "\u00a0%";
  }

  /** Which measure is in which package. */
  private static Grid measures(BriefDesk desk, List<MeasurePackage> shown) {
    Map<String, String> titles = new LinkedHashMap<>();
    shown.stream()
        .flatMap(p -> p.steps().stream())
        .forEach(s -> titles.putIfAbsent(s.id(), desk.terms().measureInTable(s.id(), s.title())));
    List<Column> columns = new ArrayList<>(List.of(desk.words("packages.measures", 0)));
    shown.forEach(p -> columns.add(Cells.words(name(desk, p), COLUMN_MM)));
    List<Row> rows = new ArrayList<>();
    titles.forEach(
        (id, title) -> {
          List<Cell> cells = new ArrayList<>(List.of(Cells.text(title)));
          shown.forEach(
              p ->
                  cells.add(
                      Cells.text(p.steps().stream().anyMatch(s -> s.id().equals(id)) ? "×" : "")));
          rows.add(new Row(cells, false));
        });
    return Grid.wide(desk.say("packages.which"), columns, rows, "").densely();
  }
}
