package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.assess.ventilation.adequacy.PurgeOpening;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.roomair.RoomAirBlocks;
import org.drysill.report.subject.CountedAir;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.table.FindingTable;
import org.drysill.report.table.Labels;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Ventilation: provided against required, the parts of both, wet rooms, purge, transfer. */
final class AirChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    VentilationResult air = desk.subject().ventilation();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(List.of(), "", "", Words.sentence(air.wholeHome().because())));
    AirChart.of(desk).ifPresent(c -> blocks.add(ChartBlocks.of("air", c)));
    blocks.add(parts(desk));
    fans(desk).ifPresent(blocks::add);
    blocks.addAll(RoomAirBlocks.of(desk));
    blocks.addAll(LeakMonths.of(desk));
    group(desk, blocks, "Extract in wet rooms", air.extract());
    group(desk, blocks, "Supply to rooms", air.supply());
    group(desk, blocks, "Background ventilators", air.background());
    List<Finding> purge = air.purge().stream().map(PurgeOpening::finding).toList();
    group(desk, blocks, "Quick airing through windows", purge);
    blocks.addAll(AiringTable.of(desk));
    group(desk, blocks, "The way of air from room to room", air.transfer());
    group(desk, blocks, "Fans behind closed doors", air.doorPressure());
    group(desk, blocks, "Fan power by flow", air.fanPower());
    return Optional.of(new Section("air", heading(air, desk), "Ventilation", false, blocks));
  }

  private static String heading(VentilationResult air, Desk desk) {
    // Rounded as in the comparison on the first page.
    CountedAir counted = CountedAir.of(desk.subject());
    String provided =
        desk.numbers().full(counted.provided().value(), Unit.AIRFLOW, Rounding.DOWN)
            + " of "
            + counted.words();
    String required =
        air.required()
            .wholeHome()
            .map(asked -> desk.numbers().one(asked.likely(), Unit.AIRFLOW, Rounding.UP))
            .orElse("what the rule set asks");
    return switch (air.wholeHome().verdict()) {
      case SHORT -> "The home gets " + provided + "; " + required + " are asked";
      case MEETS -> "The home gets " + provided + ", more than the " + required + " asked";
      case UNKNOWN ->
          "The home gets " + provided + "; whether that reaches " + required + " cannot be told";
    };
  }

  private static Block parts(Desk desk) {
    VentilationResult air = desk.subject().ventilation();
    var numbers = desk.numbers();
    var provided = air.provided();
    return new Grid(
        desk.notes(
            List.of(
                Optional.of(provided.infiltration()),
                Optional.of(provided.airChange()),
                air.required().wholeHome())),
        "Where the air comes from, and what is asked",
        List.of(Cells.words("part"), Cells.numbers(numbers.unit(Unit.AIRFLOW), 32)),
        List.of(
            Cells.row(
                Cells.text("Brought in by fans, averaged over time"),
                Cells.value(numbers, provided.supply())),
            Cells.row(
                Cells.text("Taken out by fans, averaged over time"),
                Cells.value(numbers, provided.extract())),
            Cells.row(
                Cells.text("Through leaks and ventilators in the cold season"),
                Cells.value(numbers, provided.infiltration().value(), Unit.AIRFLOW, Rounding.DOWN)),
            Cells.strong(
                Cells.text(
                    "All of it together",
                    "unbalanced fans and leaks do not simply add; "
                        + numbers.likely(provided.airChange())),
                Cells.value(numbers, provided.wholeHome().value(), Unit.AIRFLOW, Rounding.DOWN)),
            Cells.strong(
                Cells.text("Asked", air.required().governedBy()),
                Cells.text(
                    air.required()
                        .wholeHome()
                        .map(f -> numbers.plain(f.likely(), Unit.AIRFLOW, Rounding.UP))
                        .orElse(Cells.NOTHING)))),
        "");
  }

  private static Optional<Block> fans(Desk desk) {
    List<FanFlow> fans = desk.subject().ventilation().provided().fans();
    if (fans.isEmpty()) {
      return Optional.empty();
    }
    String unit = desk.numbers().unit(Unit.AIRFLOW);
    return Optional.of(
        Grid.wide(
            "What each fan does for the home",
            List.of(
                Cells.words("fan"),
                Cells.numbers("while it runs, " + unit, 30),
                Cells.numbers("of the day, %", 22),
                Cells.numbers("in, " + unit, 25),
                Cells.numbers("out, " + unit, 25)),
            fans.stream()
                .map(
                    f ->
                        Cells.row(
                            Cells.text(Words.capital(f.name()), FanWords.under(desk, f)),
                            Cells.value(desk.numbers(), f.running()),
                            Cells.value(desk.numbers(), f.shareOfDay()),
                            Cells.value(desk.numbers(), f.supply()),
                            Cells.value(desk.numbers(), f.extract())))
                .toList(),
            ""));
  }

  private static void group(Desk desk, List<Block> blocks, String head, List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    blocks.add(new Subhead(List.of(), head));
    findings.stream()
        .collect(Collectors.groupingBy(AirChapter::unit, LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(
            like -> blocks.add(FindingTable.of(desk, "", like, FindingTable.notes(desk, like, 3))));
    remarks(findings).ifPresent(blocks::add);
  }

  /** What the findings say beyond their figures, each once, with those of whom it is said. */
  private static Optional<Block> remarks(List<Finding> findings) {
    Map<String, List<String>> remarks = new LinkedHashMap<>();
    List<String> labels = Labels.of(findings.stream().map(Finding::subject).toList());
    for (int i = 0; i < labels.size(); i++) {
      String remark = findings.get(i).remark();
      if (!remark.isEmpty()) {
        remarks.computeIfAbsent(remark, r -> new ArrayList<>()).add(Words.within(labels.get(i)));
      }
    }
    return remarks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Bullets(
                List.of(),
                remarks.entrySet().stream()
                    .map(
                        e ->
                            Words.capital(Words.list(e.getValue().stream().distinct().toList()))
                                + ": "
                                + Words.sentence(e.getKey()))
                    .toList()));
  }

  private static Optional<Unit> unit(Finding finding) {
    return finding.required().or(finding::provided).map(Figure::unit);
  }
}
