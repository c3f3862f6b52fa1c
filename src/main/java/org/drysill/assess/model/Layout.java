package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.rooms.RoomBalance;
import org.drysill.physics.zones.AirRoutes;
import org.drysill.reference.model.Exchange;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.survey.Door;
import org.drysill.survey.RoomUse;

/**
 * The heated rooms of a home and the ways between them. A group of rooms from which the survey
 * lists no door to the rest has one to the hub: the first hall, else the largest room. Each room
 * has the part in what leaks in and out that the network of pressures found for it.
 */
final class Layout {
  private final ModelDefaults defaults;
  private final List<RoomBalance> balances;
  private final List<RoomFacts> rooms;
  private final List<Way> ways = new ArrayList<>();

  /**
   * A way between two rooms.
   *
   * @param one index of a room
   * @param other index of another
   * @param open true for stairs and passages, between two halls
   */
  record Way(int one, int other, boolean open) {
    boolean joins(int a, int b) {
      return (one == a && other == b) || (one == b && other == a);
    }
  }

  /**
   * The rooms of a home.
   *
   * @param balances what leaks into and out of them, as is likely
   */
  Layout(Home home, ModelDefaults defaults, List<RoomBalance> balances) {
    this.defaults = defaults;
    this.balances = List.copyOf(balances);
    this.rooms = home.rooms().stream().filter(RoomFacts::heated).toList();
    for (int i = 0; i < rooms.size(); i++) {
      for (Door door : rooms.get(i).room().doors()) {
        add(
            i,
            IntStream.range(0, rooms.size()).filter(j -> is(j, door.to())).findFirst().orElse(i));
      }
    }
    join();
  }

  ModelDefaults defaults() {
    return defaults;
  }

  List<RoomFacts> rooms() {
    return rooms;
  }

  List<Way> ways() {
    return List.copyOf(ways);
  }

  /** What passes both ways there [m³/s]. */
  Exchange exchange(Way way) {
    return way.open() ? defaults.openWay() : defaults.door();
  }

  /** The room with an id; the hub where it is none of the heated rooms. */
  int indexOf(String room) {
    return IntStream.range(0, rooms.size()).filter(i -> is(i, room)).findFirst().orElse(hub());
  }

  /** Where rooms without a door of their own open into. */
  int hub() {
    int hub = 0;
    for (int i = 1; i < rooms.size(); i++) {
      boolean hall = isHall(i) && !isHall(hub);
      boolean larger = isHall(i) == isHall(hub) && !isHall(hub) && volume(i) > volume(hub);
      hub = hall || larger ? i : hub;
    }
    return hub;
  }

  /** The part of each room in what leaks in. */
  double[] leaksIn() {
    return shares(RoomBalance::leaksInM3S);
  }

  /** The part of each room in what leaks out. */
  double[] leaksOut() {
    return shares(RoomBalance::leaksOutM3S);
  }

  AirRoutes routes() {
    return new AirRoutes(
        leaksIn(),
        leaksOut(),
        ways.stream()
            .map(w -> new AirRoutes.Door(w.one(), w.other(), exchange(w).range().likely()))
            .toList());
  }

  /** By what leaks; by volume where nothing does, as where fans hold the home above the weather. */
  private double[] shares(ToDoubleFunction<RoomBalance> leaks) {
    double[] found =
        rooms.stream()
            .mapToDouble(
                room ->
                    balances.stream()
                        .filter(b -> b.room().equals(room.id()))
                        .mapToDouble(leaks)
                        .sum())
            .toArray();
    double[] by =
        Arrays.stream(found).sum() > 0
            ? found
            : IntStream.range(0, rooms.size()).mapToDouble(this::volume).toArray();
    double all = Arrays.stream(by).sum();
    return Arrays.stream(by).map(share -> share / all).toArray();
  }

  private boolean is(int index, String id) {
    return rooms.get(index).id().equals(id);
  }

  private boolean isHall(int index) {
    return rooms.get(index).room().use() == RoomUse.HALL;
  }

  double volume(int index) {
    return rooms.get(index).volume().likely();
  }

  private void add(int one, int other) {
    if (one != other && ways.stream().noneMatch(w -> w.joins(one, other))) {
      ways.add(new Way(one, other, isHall(one) && isHall(other)));
    }
  }

  private void join() {
    for (int i = 0; i < rooms.size(); i++) {
      if (!reached(hub())[i]) {
        add(i, hub());
      }
    }
  }

  private boolean[] reached(int start) {
    boolean[] reached = new boolean[rooms.size()];
    reached[start] = true;
    for (int round = 1; round < rooms.size(); round++) {
      for (Way way : ways) {
        boolean either = reached[way.one()] || reached[way.other()];
        reached[way.one()] = either;
        reached[way.other()] = either;
      }
    }
    return reached;
  }
}
