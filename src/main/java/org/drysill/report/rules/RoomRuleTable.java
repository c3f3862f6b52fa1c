package org.drysill.report.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.assess.ventilation.RoomRule;
import org.drysill.assess.ventilation.RoomRule.Ask;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.reference.rules.Terminal;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What rule sets ask of fans in kitchens, bathrooms and WCs, and of windows opened for airing. */
final class RoomRuleTable {
  private static final List<RoomGroup> ROOMS =
      List.of(RoomGroup.KITCHEN, RoomGroup.BATHROOM, RoomGroup.SANITARY);
  private static final List<ExtractMode> MODES =
      List.of(ExtractMode.INTERMITTENT, ExtractMode.CONTINUOUS);

  private final Numbers numbers;
  private final List<RoomRule> rules;
  private final List<QuotedAirChange> quoted;

  RoomRuleTable(Desk desk) {
    this.numbers = desk.numbers();
    this.rules = desk.subject().ventilation().roomRules();
    this.quoted = desk.subject().ventilation().quoted();
  }

  Optional<Block> table() {
    return rules.isEmpty()
        ? Optional.empty()
        : Optional.of(Grid.wide(title(), columns(), rows(), "").densely());
  }

  /** The greatest figure as what it is: much air, of one room, for a short time. */
  private String title() {
    return byKitchens()
        .filter(ask -> ask.roomAirChange().isPresent())
        .reduce((a, b) -> b.flowM3S().orElseThrow() > a.flowM3S().orElseThrow() ? b : a)
        .map(
            ask ->
                "A fan answers another question: "
                    + numbers.one(ask.flowM3S().orElseThrow(), Unit.AIRFLOW)
                    + " change the air of this kitchen "
                    + numbers.plain(
                        ask.roomAirChange().orElseThrow(), Unit.AIR_CHANGE, Rounding.NEAREST)
                    + " times an hour, that of the home "
                    + numbers.plain(
                        ask.homeAirChange().orElseThrow(), Unit.AIR_CHANGE, Rounding.NEAREST)
                    + ", and only while it runs")
        .orElse("Extract of single rooms and airing answer other questions");
  }

  /** Of the governing rule set, where it asks anything of kitchens. */
  private Stream<Ask> byKitchens() {
    List<Ask> governing =
        rules.stream()
            .filter(RoomRule::governing)
            .flatMap(r -> r.asks().stream())
            .filter(ask -> ask.room() == RoomGroup.KITCHEN)
            .toList();
    return governing.isEmpty() ? asks(RoomGroup.KITCHEN) : governing.stream();
  }

  /** Figures that people are told and that are of one room. */
  Optional<Block> told() {
    String told =
        quoted.stream()
            .filter(q -> !q.wholeHome())
            .map(q -> Words.sentence(Told.words(numbers, q)))
            .collect(Collectors.joining(" "));
    return told.isEmpty()
        ? Optional.empty()
        : Optional.of(new Prose(List.of(), "small", "Told of one room, not of a home.", told));
  }

  private Stream<Ask> asks(RoomGroup room) {
    return rules.stream().flatMap(r -> r.asks().stream()).filter(a -> a.room() == room);
  }

  private List<Column> columns() {
    String flow = ", " + numbers.unit(Unit.AIRFLOW);
    return List.of(
        Cells.words("rule set"),
        Cells.numbers("kitchen, at times" + flow, 27),
        Cells.numbers("kitchen, all day" + flow, 17),
        Cells.numbers("bathroom, at times" + flow, 18),
        Cells.numbers("bathroom, all day" + flow, 18),
        Cells.numbers("WC, at times" + flow, 15),
        Cells.numbers("WC, all day" + flow, 15),
        Cells.numbers("airing of a room, ach", 17));
  }

  /** Rule sets that ask the same stand in one row. */
  private List<Row> rows() {
    Map<List<String>, List<RoomRule>> alike =
        rules.stream()
            .collect(Collectors.groupingBy(this::values, LinkedHashMap::new, Collectors.toList()));
    List<Row> rows = new ArrayList<>();
    alike.forEach((values, of) -> rows.add(row(values, of)));
    rows.add(changes());
    return rows;
  }

  private static Row row(List<String> values, List<RoomRule> of) {
    List<String> names =
        of.stream().map(rule -> Words.capital(RuleNames.place(rule.place()))).distinct().toList();
    List<Cell> cells = new ArrayList<>(List.of(Cells.text(String.join("; ", names))));
    values.forEach(value -> cells.add(Cells.text(value)));
    return new Row(cells, of.get(0).governing());
  }

  private List<String> values(RoomRule rule) {
    List<String> values = new ArrayList<>();
    for (RoomGroup room : ROOMS) {
      for (ExtractMode mode : MODES) {
        values.add(value(rule, room, mode));
      }
    }
    values.add(
        rule.airing()
            .map(n -> numbers.plain(n, Unit.AIR_CHANGE, Rounding.NEAREST))
            .orElse(Cells.NOTHING));
    return values;
  }

  private String value(RoomRule rule, RoomGroup room, ExtractMode mode) {
    String value =
        rule.asks().stream()
            .filter(ask -> ask.room() == room && ask.mode() == mode)
            .map(this::text)
            .distinct()
            .collect(Collectors.joining("; "));
    return value.isEmpty() ? Cells.NOTHING : value;
  }

  /** The rate; air changes where this home has no such room. */
  private String text(Ask ask) {
    boolean hood = ask.terminal().filter(t -> t == Terminal.HOOD).isPresent();
    String rate =
        ask.flowM3S()
            .map(q -> numbers.plain(q, Unit.AIRFLOW, Rounding.NEAREST))
            .or(() -> ask.printedAirChange().map(n -> numbers.one(n, Unit.AIR_CHANGE)))
            .orElse(Cells.NOTHING);
    return rate + (hood ? "\u00a0by\u00a0hood" : "");
  }

  /** From the least to the most of a column, as air changes of this home's room. */
  private Row changes() {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cells.text("As air changes of that room here"));
    for (RoomGroup room : ROOMS) {
      for (ExtractMode mode : MODES) {
        cells.add(Cells.text(changes(room, mode)));
      }
    }
    cells.add(Cells.text(Cells.NOTHING));
    return new Row(cells, false);
  }

  private String changes(RoomGroup room, ExtractMode mode) {
    List<Double> changes =
        asks(room)
            .filter(ask -> ask.mode() == mode)
            .flatMap(ask -> ask.roomAirChange().stream())
            .sorted()
            .toList();
    if (changes.isEmpty()) {
      return Cells.NOTHING;
    }
    String low = numbers.plain(changes.get(0), Unit.AIR_CHANGE, Rounding.NEAREST);
    String high = numbers.plain(changes.get(changes.size() - 1), Unit.AIR_CHANGE, Rounding.NEAREST);
    return low.equals(high) ? low : low + "–" + high;
  }
}
