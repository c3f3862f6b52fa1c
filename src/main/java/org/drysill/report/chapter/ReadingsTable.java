package org.drysill.report.chapter;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.humidity.ClassIndication;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.OutdoorAir;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;
import org.drysill.yaml.Moment;

/** Every reading of the air with what follows from it, and how it stands to published limits. */
final class ReadingsTable {
  private static final int VERDICT_MM = 19;

  private ReadingsTable() {}

  static Grid of(Desk desk, HumidityResult humidity) {
    List<Finding> compared =
        humidity.findings().stream()
            .filter(f -> f.required().isPresent() && isOfReading(humidity, f))
            .toList();
    List<Double> limits =
        compared.stream()
            .map(f -> f.required().orElseThrow().likely())
            .distinct()
            .sorted()
            .toList();
    return Grid.wide(
        "",
        columns(desk.numbers(), limits),
        humidity.readings().stream().map(r -> row(desk, r, compared, limits)).toList(),
        foot(humidity, compared));
  }

  /** Not of a mean over a log. */
  private static boolean isOfReading(HumidityResult humidity, Finding finding) {
    return humidity.readings().stream()
        .anyMatch(r -> finding.provided().equals(Optional.of(r.relativeHumidity())));
  }

  private static List<Column> columns(Numbers numbers, List<Double> limits) {
    List<Column> columns = new ArrayList<>();
    columns.add(Cells.words("room"));
    columns.add(Cells.numbers("air, " + numbers.unit(Unit.CELSIUS), 11));
    columns.add(Cells.numbers("humidity, %", 19));
    columns.add(Cells.numbers("dew point, " + numbers.unit(Unit.CELSIUS), 20));
    columns.add(Cells.numbers("excess, " + numbers.unit(Unit.VAPOUR_CONTENT), 20));
    columns.add(Cells.words("humidity class", 14));
    limits.forEach(
        l -> columns.add(Cells.words("below " + Math.round(l * 100) + "\u00a0%", VERDICT_MM)));
    return columns;
  }

  private static Row row(Desk desk, RoomAir air, List<Finding> compared, List<Double> limits) {
    Numbers numbers = desk.numbers();
    List<Cell> cells = new ArrayList<>();
    cells.add(
        Cells.text(Words.capital(air.roomName()), air.at().map(at -> when(desk, at)).orElse(""))
            .with(marks(desk, List.of(air.dewPoint(), air.excess()))));
    cells.add(Cells.text(numbers.plain(air.temperature())));
    cells.add(Cells.value(numbers, air.relativeHumidity()));
    cells.add(Cells.value(numbers, air.dewPoint()));
    cells.add(Cells.value(numbers, air.excess()));
    cells.add(Cells.text(air.humidityClass().map(ReadingsTable::classes).orElse(Cells.NOTHING)));
    limits.forEach(l -> cells.add(verdict(air, compared, l)));
    return new Row(cells, false);
  }

  /** The time alone where the day is that of the visit. */
  private static String when(Desk desk, Moment at) {
    return at.date().equals(desk.subject().survey().visit().date())
        ? at.time().map(LocalTime::toString).orElse("")
        : Words.moment(at);
  }

  private static List<String> marks(Desk desk, List<Figure> figures) {
    return figures.stream().map(desk.index()::mark).toList();
  }

  /** A room's finding rests on one of its readings, the wettest; the others show a dash. */
  private static Cell verdict(RoomAir air, List<Finding> compared, double limit) {
    return compared.stream()
        .filter(f -> f.provided().equals(Optional.of(air.relativeHumidity())))
        .filter(f -> f.required().orElseThrow().likely() == limit)
        .findFirst()
        .map(f -> Cells.verdict(f.verdict()))
        .orElse(Cells.text(Cells.NOTHING));
  }

  private static String outdoor(OutdoorAir air) {
    boolean read = air.source() == OutdoorAir.Source.READING;
    return (read ? "the " : "") + air.said();
  }

  private static String classes(ClassIndication indication) {
    return indication.lowest() == indication.highest()
        ? Integer.toString(indication.lowest())
        : indication.lowest() + "–" + indication.highest();
  }

  private static String foot(HumidityResult humidity, List<Finding> compared) {
    List<String> parts = new ArrayList<>();
    parts.add(
        "Held against "
            + Words.list(
                humidity.readings().stream().map(r -> outdoor(r.outdoor())).distinct().toList())
            + ".");
    List<String> meanings =
        humidity.readings().stream()
            .flatMap(r -> r.humidityClass().stream())
            .map(c -> "class " + c.likely() + ", " + c.meaning())
            .distinct()
            .sorted()
            .toList();
    if (!meanings.isEmpty()) {
      parts.add(
          "The class is that of ISO 13788 which such an excess would have as a monthly mean: "
              + String.join("; ", meanings)
              + ".");
    }
    if (!compared.isEmpty()) {
      parts.add("Each comparison is one of a moment.");
    }
    return String.join(" ", parts);
  }
}
