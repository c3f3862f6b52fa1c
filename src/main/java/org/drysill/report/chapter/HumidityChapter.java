package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.table.FindingTable;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Readings of the air: humidity, dew point, vapour excess over outdoors, CO₂. */
final class HumidityChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    HumidityResult humidity = desk.subject().humidity();
    if (humidity.readings().isEmpty() && humidity.co2().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "Relative humidity moves with the temperature; the vapour excess, which is the water "
                + "that the air indoors holds beyond that outdoors, does not. The dew point is the "
                + "temperature at which a surface turns wet."));
    if (!humidity.readings().isEmpty()) {
      blocks.add(table(desk, humidity.readings()));
      blocks.add(
          new Prose(
              List.of(), "small", "", "Held against: " + Words.list(outdoor(humidity)) + "."));
    }
    blocks.addAll(classes(humidity));
    if (!humidity.co2().isEmpty()) {
      blocks.add(new Subhead(List.of(), "Carbon dioxide"));
      blocks.add(
          new Bullets(
              List.of(),
              humidity.co2().stream()
                  .map(c -> Words.sentence(Words.capital(c.roomName()) + ": " + c.said()))
                  .toList()));
    }
    findings(desk, humidity.findings()).forEach(blocks::add);
    return Optional.of(new Section("humidity", heading(desk, humidity), "Humidity", false, blocks));
  }

  private static String heading(Desk desk, HumidityResult humidity) {
    return humidity
        .home()
        .map(
            h ->
                "The air indoors held "
                    + desk.numbers().full(h.excess())
                    + " more water than that outdoors")
        .orElse("What the readings say of the air");
  }

  private static List<String> outdoor(HumidityResult humidity) {
    return humidity.readings().stream().map(r -> r.outdoor().said()).distinct().toList();
  }

  private static Block table(Desk desk, List<RoomAir> readings) {
    Numbers numbers = desk.numbers();
    return new Grid(
        desk.notes(
            List.of(
                Optional.of(readings.get(0).dewPoint()),
                Optional.of(readings.get(0).vapourContent()),
                Optional.of(readings.get(0).excess()))),
        "",
        List.of(
            Cells.words("room"),
            Cells.numbers("air, " + numbers.unit(Unit.CELSIUS), 14),
            Cells.numbers("humidity, %", 22),
            Cells.numbers("dew point, " + numbers.unit(Unit.CELSIUS), 24),
            Cells.numbers("excess, " + numbers.unit(Unit.VAPOUR_CONTENT), 24)),
        readings.stream().map(r -> row(numbers, r)).toList(),
        "");
  }

  private static Row row(Numbers numbers, RoomAir air) {
    return Cells.row(
        Cells.text(Words.capital(air.roomName()), air.at().map(Words::moment).orElse("")),
        Cells.text(numbers.plain(air.temperature())),
        Cells.value(numbers, air.relativeHumidity()),
        Cells.value(numbers, air.dewPoint()),
        Cells.value(numbers, air.excess()));
  }

  private static List<Block> classes(HumidityResult humidity) {
    List<String> lines =
        humidity.readings().stream()
            .filter(r -> r.humidityClass().isPresent())
            .map(
                r ->
                    Words.capital(r.roomName())
                        + ": as a monthly mean this would be humidity class "
                        + classes(
                            r.humidityClass().get().lowest(), r.humidityClass().get().highest())
                        + ", "
                        + r.humidityClass().get().meaning()
                        + ".")
            .distinct()
            .toList();
    return lines.isEmpty()
        ? List.of()
        : List.of(
            new Subhead(List.of(), "What such an excess is typical of"),
            new Bullets(List.of(), lines));
  }

  private static String classes(int lowest, int highest) {
    return lowest == highest ? Integer.toString(lowest) : lowest + "–" + highest;
  }

  private static List<Block> findings(Desk desk, List<Finding> findings) {
    List<Finding> told = findings.stream().filter(f -> f.provided().isPresent()).toList();
    return told.isEmpty()
        ? List.of()
        : List.of(
            new Subhead(List.of(), "Against published limits"),
            FindingTable.of(desk, "", told, FindingTable.notes(desk, told, 2)));
  }
}
