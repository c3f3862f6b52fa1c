package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.rules.Confidence;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.ExtractRate;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.Terminal;
import org.drysill.survey.YesNo;

/**
 * The extract rates that a rule set prints for a wet room.
 *
 * @param rules the rule set
 * @param room the room
 */
record WetRoomRates(RuleSet rules, RoomFacts room) {

  /** The rows that hold for extract of a mode at a place of the room. */
  List<ExtractRate> rows(ExtractMode mode, Terminal terminal) {
    return rules.extract().stream()
        .filter(row -> row.mode() == mode)
        .filter(row -> RuleFacts.group(room.room().use()).filter(g -> g == row.room()).isPresent())
        .filter(row -> row.terminal().map(t -> t == terminal).orElse(true))
        .filter(row -> row.when().isEmpty() || isInternal())
        .toList();
  }

  /** What is asked [m³/s]: the greatest of the rows; empty where there is none. */
  Optional<Asking> asking(ExtractMode mode, Terminal terminal) {
    List<ExtractRate> rows = rows(mode, terminal);
    return rows.stream()
        .map(this::rate)
        .reduce((a, b) -> b.likely() > a.likely() ? b : a)
        .map(rate -> new Asking(figure(rate, rows), rows));
  }

  /**
   * What is asked of a room.
   *
   * @param rate the rate
   * @param rows the rows that it comes from
   */
  record Asking(Figure rate, List<ExtractRate> rows) {
    Optional<Confidence> confidence() {
      return rows.stream().flatMap(r -> r.confidence().stream()).max(Confidence::compareTo);
    }

    boolean openingsInstead() {
      return rows.stream().anyMatch(r -> r.openingsInstead().orElse(false));
    }
  }

  /** Of a rate the one condition that there may be: no wall of the room looks outside. */
  private boolean isInternal() {
    return room.room().externalWall().filter(w -> w == YesNo.NO).isPresent();
  }

  private Range rate(ExtractRate row) {
    return row.rate()
        .map(q -> Range.exactly(q.value()))
        .orElseGet(
            () -> {
              double perHour = row.airChange().orElseThrow().value();
              return room.volume().value().times(Airflow.ofAirChange(perHour, 1).m3PerSecond());
            });
  }

  private Figure figure(Range rate, List<ExtractRate> rows) {
    List<Input> inputs =
        rows.stream()
            .map(
                r ->
                    Input.of(
                        "q" + (rows.indexOf(r) + 1),
                        r.airChange().map(n -> n.written() + " of the room").orElse("printed rate"),
                        rate(r),
                        Unit.AIRFLOW,
                        Basis.PUBLISHED))
            .toList();
    return Asked.computed(
        "room." + room.id() + ".extract.required",
        "extract asked of the " + room.name(),
        rate,
        Unit.AIRFLOW,
        rows.size() == 1 ? "q as printed" : "q = max of the rows that hold",
        inputs,
        rows.stream().map(ExtractRate::source).distinct().toList());
  }
}
