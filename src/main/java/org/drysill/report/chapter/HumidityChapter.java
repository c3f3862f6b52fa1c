package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.humidity.Co2Air;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
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
      blocks.add(ReadingsTable.of(desk, humidity));
    }
    if (!humidity.co2().isEmpty()) {
      blocks.add(co2(desk, humidity.co2()));
    }
    later(humidity.findings()).ifPresent(blocks::add);
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

  private static Block co2(Desk desk, List<Co2Air> airs) {
    Numbers numbers = desk.numbers();
    List<Optional<Figure>> noted =
        List.of(Optional.of(airs.get(0).excess()), airs.get(0).airPerPerson());
    return new Grid(
        desk.notes(noted),
        "Carbon dioxide, and the air for each person that it would mean",
        List.of(
            Cells.words("room"),
            Cells.numbers("read, " + numbers.unit(Unit.PPM), 34),
            Cells.numbers("over outdoors", 28),
            Cells.numbers(numbers.unit(Unit.AIRFLOW) + " per person", 28)),
        airs.stream()
            .map(
                c ->
                    Cells.row(
                        Cells.text(Words.capital(c.roomName())),
                        Cells.value(numbers, c.concentration()),
                        Cells.value(numbers, c.excess()),
                        Cells.value(numbers, c.airPerPerson())))
            .toList(),
        Words.sentence(
            String.join(
                " ", airs.stream().map(c -> Words.sentence(c.said())).distinct().toList())));
  }

  /** What no single reading can judge, each limit with what it is a limit of. */
  private static Optional<Block> later(List<Finding> findings) {
    List<String> said =
        findings.stream()
            .filter(f -> f.provided().isEmpty() && f.required().isPresent())
            .map(f -> Words.sentence(f.because()))
            .distinct()
            .toList();
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Prose(List.of(), "small", "Only a logger can tell.", String.join(" ", said)));
  }
}
