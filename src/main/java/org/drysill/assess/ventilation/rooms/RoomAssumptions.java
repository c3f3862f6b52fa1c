package org.drysill.assess.ventilation.rooms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drysill.assess.Assumption;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.ventilation.RoomAirDefaults;
import org.drysill.reference.ventilation.VentilationDefaults;

/** What is taken for granted about the way of air from room to room. */
final class RoomAssumptions {
  private static final String ID = "ventilation.rooms.";

  private final Layout layout;
  private final FanAir fans;
  private final RoomAirDefaults defaults;
  private final List<Assumption> all = new ArrayList<>();

  RoomAssumptions(Layout layout, FanAir fans, VentilationDefaults defaults) {
    this.layout = layout;
    this.fans = fans;
    this.defaults = defaults.roomAir();
  }

  List<Assumption> all() {
    if (layout.places().size() > 1) {
      leaks();
      closed();
    }
    gaps();
    open();
    joined();
    ducted();
    outside();
    return List.copyOf(all);
  }

  private void leaks() {
    add(
        "leaks",
        "where the home leaks",
        "by the air volume of its rooms, inner rooms at "
            + defaults.innerRoom().value().written()
            + " of that",
        "A pressure test tells how much a home leaks and not where.",
        "Have the leaks looked for with smoke during a pressure test.",
        defaults.innerRoom().source());
  }

  private void closed() {
    add(
        "doors_closed",
        "internal doors",
        "closed, with cracks of "
            + defaults.doorEdges().value().written()
            + " besides the gap under each",
        "What fans do to each room shows with the doors closed; open doors mix the air of rooms.",
        "Measure the pressure across a closed door while the fans run.",
        defaults.doorEdges().source());
  }

  private void gaps() {
    count(
        Way.Kind.GAP_ASSUMED,
        n -> n + " whose gap was not measured",
        "door_gaps",
        defaults.doorGap().value().written(),
        "The survey lists the door and no gap.",
        "Measure the gap under each internal door.",
        defaults.doorGap().source());
  }

  private void open() {
    count(
        Way.Kind.OPEN,
        n -> n + " between halls",
        "open_ways",
        "open, " + defaults.openWay().value().written(),
        "Halls and landings meet at a stair or passage; the survey gives no gap of a door there.",
        "Where there is a door between them, measure the gap under it.",
        defaults.openWay().source());
  }

  private void joined() {
    count(
        Way.Kind.DOOR_ASSUMED,
        n -> n + " that the survey does not list",
        "doors_not_listed",
        "to the hall, with a gap of " + defaults.doorGap().value().written(),
        "The survey lists no way from these rooms to the rest of the home.",
        "List the doors of every room with the gap under each.",
        defaults.doorGap().source());
  }

  private void count(
      Way.Kind kind,
      UnaryOperator<String> about,
      String id,
      String assumed,
      String why,
      String better,
      Citation source) {
    long count = layout.ways().stream().filter(way -> way.kind() == kind).count();
    if (count > 0) {
      String ways = kind == Way.Kind.OPEN ? "way" : "door";
      add(
          id,
          about.apply(count == 1 ? "one " + ways : count + " " + ways + "s"),
          assumed,
          why,
          better,
          source);
    }
  }

  private void ducted() {
    for (FanFlow fan : fans.forWholeHome()) {
      add(
          "ducted." + fan.fan().id(),
          "rooms served by " + fan.name(),
          "supply to the rooms that people stay in by floor area, extract from wet rooms alike",
          "The survey gives the flow of the system and not of each terminal.",
          "Measure the flow at every terminal.",
          ours("how a ducted system shares its air out"));
    }
  }

  private void outside() {
    for (FanFlow fan : fans.outsideHeatedRooms()) {
      add(
          "outside." + fan.fan().id(),
          "where the air of " + fan.name() + " comes and goes",
          "the hall",
          "The fan is listed outside the heated rooms.",
          "List the fan in the room where its grille is.",
          ours("where a fan in a loft or cellar blows to or draws from"));
    }
  }

  private static Citation ours(String clause) {
    return new Citation(
        "Planning assumption", Optional.empty(), Optional.of(clause), How.ASSUMPTION);
  }

  private void add(
      String id, String about, String assumed, String why, String better, Citation source) {
    all.add(new Assumption(ID + id, about, assumed, why, better, source));
  }
}
