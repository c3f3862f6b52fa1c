package org.drysill.assess.ventilation.rooms;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Door;
import org.drysill.yaml.Quantity;

/**
 * The heated rooms of a home and the ways between them. Every door is taken as closed. A group of
 * rooms from which the survey lists no door to the rest has one to the hall.
 */
final class Layout {
  private final VentilationDefaults defaults;
  private final List<Place> places = new ArrayList<>();
  private final List<Way> ways = new ArrayList<>();

  Layout(Home home, VentilationDefaults defaults) {
    this.defaults = defaults;
    home.rooms().stream().filter(RoomFacts::heated).map(Place::of).forEach(places::add);
    for (int i = 0; i < places.size(); i++) {
      for (Door door : places.get(i).facts().orElseThrow().room().doors()) {
        addDoor(i, door);
      }
    }
    joinGroups();
  }

  List<Place> places() {
    return List.copyOf(places);
  }

  List<Way> ways() {
    return List.copyOf(ways);
  }

  /** The place of a room; the hall where it is none of the heated rooms. */
  int indexOf(String room) {
    return find(room).orElseGet(this::hub);
  }

  Optional<Integer> find(String room) {
    return IntStream.range(0, places.size())
        .filter(i -> places.get(i).id().equals(room))
        .boxed()
        .findFirst();
  }

  /** Where rooms without a door of their own open into: the first hall, else the largest room. */
  int hub() {
    return IntStream.range(0, places.size())
        .filter(i -> places.get(i).isHall())
        .boxed()
        .findFirst()
        .orElseGet(() -> largest(IntStream.range(0, places.size()).boxed().toList()));
  }

  /** Of a door that both of its rooms list, the entry with a gap counts. */
  private void addDoor(int from, Door door) {
    Optional<Integer> to = find(door.to()).filter(other -> other != from);
    if (to.isEmpty()) {
      return;
    }
    Way way = way(from, to.get(), door);
    Optional<Way> same = ways.stream().filter(w -> w.joins(from, to.get())).findFirst();
    if (same.isEmpty()) {
      ways.add(way);
    } else if (way.kind() == Way.Kind.MEASURED && same.get().kind() != Way.Kind.MEASURED) {
      ways.set(ways.indexOf(same.get()), way);
    }
  }

  private Way way(int from, int to, Door door) {
    if (door.undercut().isPresent()) {
      double gap = door.undercut().get().value();
      return new Way(from, to, doorArea(gap, door.width()), Way.Kind.MEASURED);
    }
    if (places.get(from).isHall() && places.get(to).isHall()) {
      return new Way(from, to, defaults.roomAir().openWay().value().value(), Way.Kind.OPEN);
    }
    return new Way(from, to, doorArea(usualGap(), door.width()), Way.Kind.GAP_ASSUMED);
  }

  private double usualGap() {
    return defaults.roomAir().doorGap().value().value();
  }

  private double doorArea(double gapM, Optional<Quantity> width) {
    double widthM = width.orElse(defaults.doorWidth().value()).value();
    return gapM * widthM + defaults.roomAir().doorEdges().value().value();
  }

  private void joinGroups() {
    List<List<Integer>> groups = groups();
    if (groups.size() < 2) {
      return;
    }
    if (places.stream().noneMatch(Place::isHall)) {
      places.add(Place.UNSEEN_HALL);
    }
    int hub = hub();
    for (List<Integer> group : groups) {
      if (!group.contains(hub)) {
        ways.add(joining(hub, group));
      }
    }
  }

  /** Halls meet at a stair or passage, other rooms at a door of their largest. */
  private Way joining(int hub, List<Integer> group) {
    Optional<Integer> hall = group.stream().filter(i -> places.get(i).isHall()).findFirst();
    return hall.map(
            h -> new Way(hub, h, defaults.roomAir().openWay().value().value(), Way.Kind.OPEN))
        .orElseGet(
            () ->
                new Way(
                    hub,
                    largest(group),
                    doorArea(usualGap(), Optional.empty()),
                    Way.Kind.DOOR_ASSUMED));
  }

  private int largest(List<Integer> group) {
    return group.stream()
        .max(Comparator.comparingDouble(i -> places.get(i).floorAreaM2()))
        .orElseThrow();
  }

  /** The rooms in groups within which air finds a way. */
  private List<List<Integer>> groups() {
    int[] group = IntStream.range(0, places.size()).toArray();
    for (Way way : ways) {
      int old = group[way.to()];
      int now = group[way.from()];
      for (int i = 0; i < group.length; i++) {
        group[i] = group[i] == old ? now : group[i];
      }
    }
    return IntStream.range(0, places.size())
        .mapToObj(
            g -> IntStream.range(0, places.size()).filter(i -> group[i] == g).boxed().toList())
        .filter(members -> !members.isEmpty())
        .toList();
  }
}
