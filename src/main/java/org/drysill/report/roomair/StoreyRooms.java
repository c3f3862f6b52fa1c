package org.drysill.report.roomair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.ventilation.rooms.DoorAir;
import org.drysill.assess.ventilation.rooms.RoomBalance;
import org.drysill.report.chart.AirSketch.Flow;
import org.drysill.report.chart.AirSketch.Kind;
import org.drysill.report.chart.AirSketch.Room;
import org.drysill.report.chart.AirSketch.Storey;
import org.drysill.report.words.Words;

/** The rooms of one storey with their flows, in parts where they are many. */
final class StoreyRooms {
  private final Sketches sketches;
  private final String label;
  private final List<RoomBalance> rooms;
  private final Optional<RoomBalance> hall;
  private final Optional<RoomBalance> below;

  /**
   * The rooms of a storey.
   *
   * @param hall the room that others open into
   * @param below the same of the next storey down
   */
  StoreyRooms(
      Sketches sketches,
      String label,
      List<RoomBalance> rooms,
      Optional<RoomBalance> hall,
      Optional<RoomBalance> below) {
    this.sketches = sketches;
    this.label = label;
    this.rooms = rooms;
    this.hall = hall;
    this.below = below;
  }

  List<Storey> parts() {
    List<Room> others =
        rooms.stream().filter(room -> hall.filter(room::equals).isEmpty()).map(this::room).toList();
    Optional<Room> middle = hall.map(this::middle);
    List<Storey> parts = new ArrayList<>();
    int from = 0;
    do {
      Storey part = part(middle, others, from, others.size());
      int to = others.size();
      while (to > from + 1 && !sketches.fits(part)) {
        to--;
        part = part(middle, others, from, to);
      }
      parts.add(part);
      from = to;
    } while (from < others.size());
    return parts;
  }

  /** Some of the rooms; the stair leads down from the last of them. */
  private Storey part(Optional<Room> middle, List<Room> others, int from, int to) {
    String more = from == 0 || label.isEmpty() ? label : label + ", continued";
    return new Storey(
        more, middle, others.subList(from, to), to == others.size() ? stair() : Optional.empty());
  }

  /** Between this hall and the one below; in is upwards. */
  private Optional<Flow> stair() {
    return hall.flatMap(
        here ->
            below.flatMap(
                there ->
                    sketches
                        .door(here, there)
                        .flatMap(
                            door ->
                                sketches.flow(
                                    Kind.TRANSFER,
                                    door.to().equals(here.room()),
                                    door.flowM3S(),
                                    ""))));
  }

  private Room room(RoomBalance room) {
    Optional<Flow> door =
        hall.flatMap(middle -> sketches.door(room, middle))
            .flatMap(
                way ->
                    sketches.flow(Kind.TRANSFER, way.to().equals(room.room()), way.flowM3S(), ""));
    return new Room(
        sketches.label(room), room.floorAreaM2(), outside(room, hall.stream().toList()), door);
  }

  /** The hall's flows to rooms of its storey and to the next hall are drawn as arrows elsewhere. */
  private Room middle(RoomBalance room) {
    List<RoomBalance> drawn =
        Stream.concat(rooms.stream(), Stream.concat(below.stream(), above(room))).toList();
    return new Room(
        sketches.label(room), room.floorAreaM2(), outside(room, drawn), Optional.empty());
  }

  /** Halls above, whose stair is drawn from there. */
  private Stream<RoomBalance> above(RoomBalance room) {
    return sketches.rooms().stream()
        .filter(other -> other.hall() && other.storey() == room.storey() + 1);
  }

  private List<Flow> outside(RoomBalance room, List<RoomBalance> drawn) {
    List<Flow> flows = new ArrayList<>();
    sketches.flow(Kind.SUPPLY, true, room.supplyM3S(), "supply").ifPresent(flows::add);
    sketches.flow(Kind.LEAKS, true, room.leaksInM3S(), "leaks").ifPresent(flows::add);
    for (RoomBalance other : sketches.rooms()) {
      if (!drawn.contains(other)) {
        sketches.door(room, other).flatMap(door -> apart(room, other, door)).ifPresent(flows::add);
      }
    }
    sketches.flow(Kind.LEAKS, false, room.leaksOutM3S(), "leaks").ifPresent(flows::add);
    sketches.flow(Kind.EXTRACT, false, room.extractM3S(), "extract").ifPresent(flows::add);
    return flows;
  }

  /** A way to a room that stands elsewhere in the sketch: an arrow that names it. */
  private Optional<Flow> apart(RoomBalance room, RoomBalance other, DoorAir door) {
    boolean in = door.to().equals(room.room());
    return sketches
        .flow(Kind.TRANSFER, in, door.flowM3S(), "")
        .map(
            flow ->
                new Flow(
                    flow.kind(),
                    flow.in(),
                    flow.size(),
                    flow.label() + (in ? " from " : " to ") + Words.shortened(other.name(), 40)));
  }
}
