package org.drysill.report.roomair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.rooms.DoorAir;
import org.drysill.assess.ventilation.rooms.RoomAirResult;
import org.drysill.assess.ventilation.rooms.RoomBalance;
import org.drysill.report.chart.AirSketch;
import org.drysill.report.chart.AirSketch.Flow;
import org.drysill.report.chart.AirSketch.Kind;
import org.drysill.report.chart.AirSketch.Storey;
import org.drysill.report.chart.ChartText;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Sketches of a home with its air flows: one, or several where one would not fit a page. */
final class Sketches {
  /** As high as what a page may be left for at most, so that none is left half empty. */
  private static final double MOST_MM = 112;

  private final Numbers numbers;
  private final RoomAirResult air;
  private final String message;

  Sketches(Desk desk, String message) {
    this.numbers = desk.numbers();
    this.air = desk.subject().ventilation().rooms();
    this.message = message;
  }

  /** Storeys from top to bottom, as many to a sketch as share a page with others. */
  List<AirSketch> all() {
    List<AirSketch> sketches = new ArrayList<>();
    List<Storey> page = new ArrayList<>();
    for (Storey storey : storeys()) {
      List<Storey> longer = Stream.concat(page.stream(), Stream.of(storey)).toList();
      if (!page.isEmpty() && sketch(longer, 0).heightMm() > MOST_MM) {
        sketches.add(sketch(page, sketches.size()));
        page.clear();
      }
      page.add(storey);
    }
    sketches.add(sketch(page, sketches.size()));
    return sketches;
  }

  private AirSketch sketch(List<Storey> storeys, int before) {
    return new AirSketch(
        new ChartText(
            before == 0 ? message : "The way of the air, continued",
            numbers.unit(Unit.AIRFLOW),
            "Black: blown in by fans. Hollow: taken out by fans. Broken: through leaks and"
                + " ventilators. Grey: from room to room. Areas of rooms in proportion;"
                + " arrows as thick as the flow is great",
            message + ". " + words()),
        storeys);
  }

  /** What each room gets, for those who cannot see the sketch. */
  private String words() {
    return Words.list(
            air.rooms(),
            room ->
                Words.shortened(room.name(), 40)
                    + ": in "
                    + text(room.inM3S())
                    + ", of which from outside "
                    + text(room.supplyM3S() + room.leaksInM3S()))
        + " "
        + numbers.unit(Unit.AIRFLOW)
        + ".";
  }

  private List<Storey> storeys() {
    TreeMap<Integer, List<RoomBalance>> byStorey =
        air.rooms().stream()
            .collect(
                Collectors.groupingBy(
                    RoomBalance::storey,
                    () -> new TreeMap<>(Comparator.reverseOrder()),
                    Collectors.toList()));
    List<Storey> storeys = new ArrayList<>();
    for (var entry : byStorey.entrySet()) {
      String label = byStorey.size() > 1 ? label(entry.getKey()) : "";
      Optional<RoomBalance> hall = hall(entry.getValue());
      Optional<RoomBalance> below =
          Optional.ofNullable(byStorey.higherEntry(entry.getKey()))
              .flatMap(e -> hall(e.getValue()));
      storeys.addAll(new StoreyRooms(this, label, entry.getValue(), hall, below).parts());
    }
    return storeys;
  }

  private static String label(int storey) {
    if (storey == 0) {
      return "Entrance level";
    }
    String floors = Words.capital(Words.count(Math.abs(storey), "floor", "floors"));
    return floors + (storey > 0 ? " up" : " down");
  }

  /** The room that most others of its storey open into. */
  private Optional<RoomBalance> hall(List<RoomBalance> rooms) {
    return rooms.stream()
        .filter(room -> ways(room, rooms) > 0)
        .max(Comparator.comparing(RoomBalance::hall).thenComparingLong(room -> ways(room, rooms)));
  }

  private long ways(RoomBalance room, List<RoomBalance> rooms) {
    return rooms.stream()
        .filter(other -> !other.room().equals(room.room()) && door(room, other).isPresent())
        .count();
  }

  /** The flow between two rooms; in is into the first. */
  Optional<DoorAir> door(RoomBalance room, RoomBalance other) {
    return air.doors().stream()
        .filter(
            door ->
                (door.from().equals(room.room()) && door.to().equals(other.room()))
                    || (door.to().equals(room.room()) && door.from().equals(other.room())))
        .findFirst();
  }

  List<RoomBalance> rooms() {
    return air.rooms();
  }

  /** True where a storey stands in one sketch. */
  boolean fits(Storey storey) {
    return sketch(List.of(storey), 0).heightMm() <= MOST_MM;
  }

  String label(RoomBalance room) {
    String area =
        room.floorAreaM2() > 0 ? ", " + numbers.one(room.floorAreaM2(), Unit.SQUARE_METRE) : "";
    return Words.capital(Words.shortened(room.name(), 24)) + area;
  }

  String text(double m3S) {
    return numbers.plain(m3S, Unit.AIRFLOW, Rounding.NEAREST);
  }

  /** A flow, where it would not print as nothing. */
  Optional<Flow> flow(Kind kind, boolean in, double m3S, String words) {
    String text = text(m3S);
    return text.matches("[0.]*")
        ? Optional.empty()
        : Optional.of(new Flow(kind, in, m3S, words.isEmpty() ? text : words + " " + text));
  }
}
