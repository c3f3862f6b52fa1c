package org.drysill.report.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.drysill.report.words.Words;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Door;
import org.drysill.survey.Fan;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Worded;

/**
 * What is built otherwise by two surveys of a home: fans, windows, doors, the material of cold
 * places. Things are matched by the id of their room and their own; what one survey does not say is
 * no difference.
 */
final class Differences {
  private static final String NONE = "none";

  private final UnaryOperator<String> rooms;
  private final List<Difference> found = new ArrayList<>();
  private final Map<Difference, List<String>> doors = new LinkedHashMap<>();

  private Differences(UnaryOperator<String> rooms) {
    this.rooms = rooms;
  }

  /**
   * The differences, room by room.
   *
   * @param before the earlier survey
   * @param after the later one
   * @param rooms the name of a room in sentences by its id
   */
  static List<Difference> between(Survey before, Survey after, UnaryOperator<String> rooms) {
    Differences differences = new Differences(rooms);
    Map<String, Room> then = byId(before.rooms(), Room::id);
    for (Room room : after.rooms()) {
      Optional.ofNullable(then.get(room.id())).ifPresent(old -> differences.room(old, room));
    }
    return differences.all();
  }

  private void room(Room before, Room after) {
    fans(before, after);
    pairs(before.windows(), after.windows(), Window::id, (a, b) -> window(after, a, b));
    pairs(before.doors(), after.doors(), Door::to, (a, b) -> door(after, a, b));
    pairs(before.coldSpots(), after.coldSpots(), ColdSpot::id, (a, b) -> spot(after, a, b));
  }

  private void fans(Room before, Room after) {
    Map<String, Fan> then = byId(before.fans(), Fan::id);
    Map<String, Fan> now = byId(after.fans(), Fan::id);
    then.forEach(
        (id, fan) ->
            add(named(after, fan), kind(fan), now.containsKey(id) ? kind(now.get(id)) : NONE));
    now.forEach(
        (id, fan) -> {
          if (!then.containsKey(id)) {
            add(named(after, fan), NONE, kind(fan));
          }
        });
  }

  private static String kind(Fan fan) {
    return fan.kind().word()
        + fan.declaredFlow().map(f -> ", " + written(f) + " declared").orElse("");
  }

  private String named(Room room, Fan fan) {
    return fan.name().orElse("Fan in the " + rooms.apply(room.id()));
  }

  private void window(Room room, Window before, Window after) {
    String name =
        Words.capital(rooms.apply(room.id())) + ", " + Words.within(after.name().orElse("window"));
    both(name + ": glazing", before.glazing(), after.glazing());
    both(name + ": frame", before.frame().map(Worded::word), after.frame().map(Worded::word));
    both(
        name + ": ventilator",
        before.backgroundVentilator().map(Differences::orNone),
        after.backgroundVentilator().map(Differences::orNone));
  }

  private void door(Room room, Door before, Door after) {
    String name =
        Words.within(rooms.apply(room.id())) + "–" + Words.within(rooms.apply(after.to()));
    before
        .undercut()
        .map(Differences::written)
        .flatMap(
            then ->
                after
                    .undercut()
                    .map(Differences::written)
                    .filter(now -> !now.equals(then))
                    .map(now -> new Difference("", then, now)))
        .ifPresent(gap -> doors.computeIfAbsent(gap, key -> new ArrayList<>()).add(name));
  }

  private void spot(Room room, ColdSpot before, ColdSpot after) {
    String name =
        Words.capital(rooms.apply(room.id()))
            + ", "
            + Words.within(after.name().orElse(after.kind().word()));
    both(
        name + ": room side",
        before.material().map(Worded::word),
        after.material().map(Worded::word));
    after
        .notes()
        .filter(note -> !before.notes().equals(after.notes()))
        .ifPresent(
            note ->
                add(name, before.notes().map(Words::sentence).orElse("–"), Words.sentence(note)));
  }

  private void both(String what, Optional<String> before, Optional<String> after) {
    before.ifPresent(a -> after.ifPresent(b -> add(what, a, b)));
  }

  private void add(String what, String before, String after) {
    if (!before.equals(after)) {
      found.add(new Difference(what, before, after));
    }
  }

  /** Doors that differ alike stand in one row. */
  private List<Difference> all() {
    doors.forEach(
        (gap, names) ->
            found.add(
                new Difference(
                    (names.size() > 1 ? "Gaps under the doors " : "Gap under the door ")
                        + Words.list(names),
                    gap.before(),
                    gap.after())));
    return List.copyOf(found);
  }

  private static String orNone(Quantity area) {
    return area.value() > 0 ? written(area) : NONE;
  }

  private static String written(Quantity quantity) {
    return quantity.written().replace(' ', '\u00a0');
  }

  private static <T> void pairs(
      List<T> before, List<T> after, Function<T, String> id, Pairing<T> each) {
    Map<String, T> then = byId(before, id);
    for (T now : after) {
      Optional.ofNullable(then.get(id.apply(now))).ifPresent(old -> each.of(old, now));
    }
  }

  private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
    Map<String, T> byId = new LinkedHashMap<>();
    things.forEach(thing -> byId.putIfAbsent(id.apply(thing), thing));
    return byId;
  }

  /** What is done with one thing of both surveys. */
  private interface Pairing<T> {
    void of(T before, T after);
  }
}
