package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.assess.ventilation.adequacy.PurgeOpening;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;

/**
 * Openings, doors and fan power, counted by what each comparison shows; what falls short by name.
 */
final class Openings {
  private static final int NAMED = 12;

  private Openings() {}

  /** The ventilators of the home as a whole. */
  static Stream<Finding> ofHome(VentilationResult air) {
    return air.background().stream()
        .filter(f -> f.room().isEmpty())
        .filter(f -> f.required().isPresent());
  }

  /** Comparisons of one kind in a row; empty where there are none. */
  static Optional<Grid> of(BriefDesk desk, VentilationResult air) {
    Map<String, List<Finding>> kinds = new LinkedHashMap<>();
    kinds.put(
        "openings.background",
        air.background().stream().filter(f -> f.room().isPresent()).toList());
    kinds.put("openings.transfer", air.transfer());
    kinds.put("openings.pressure", air.doorPressure());
    kinds.put("openings.purge", air.purge().stream().map(PurgeOpening::finding).toList());
    kinds.put("openings.power", air.fanPower());
    List<Row> rows = new ArrayList<>();
    kinds.forEach(
        (key, findings) -> {
          if (!findings.isEmpty()) {
            rows.add(row(desk, desk.say(key), findings));
          }
        });
    Grid grid =
        Grid.wide(
            desk.say("openings.title"),
            List.of(
                desk.words("openings.what", 0),
                Cells.numbers(desk.say("judged.meets"), 12),
                Cells.numbers(desk.say("judged.short"), 18),
                Cells.numbers(desk.say("judged.unknown"), 14),
                desk.words("openings.short", 80)),
            rows,
            "");
    return rows.isEmpty() ? Optional.empty() : Optional.of(grid.densely());
  }

  private static Row row(BriefDesk desk, String what, List<Finding> findings) {
    return Cells.row(
        Cells.text(what),
        count(findings, Verdict.MEETS),
        count(findings, Verdict.SHORT),
        count(findings, Verdict.UNKNOWN),
        Cells.text(
            desk.names()
                .few(
                    findings.stream()
                        .filter(f -> f.verdict() == Verdict.SHORT)
                        .map(f -> desk.terms().about(f))
                        .distinct(),
                    NAMED)));
  }

  private static Cell count(List<Finding> findings, Verdict verdict) {
    return Cells.text(Long.toString(findings.stream().filter(f -> f.verdict() == verdict).count()));
  }
}
