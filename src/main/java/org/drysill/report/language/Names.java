package org.drysill.report.language;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.report.words.Words;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Fan;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;

/**
 * How rooms and places are called in a language. A name that the survey gives stays: it is how the
 * people there call it. Where it gives none, the word for what it is does, with the survey's id
 * where two would be called alike.
 */
public final class Names {
  private static final int LONGEST = 60;

  private final Phrases phrases;
  private final Map<String, String> rooms;
  private final Map<String, String> places = new HashMap<>();

  /** The names of a survey. */
  public Names(Survey survey, Phrases phrases) {
    this.phrases = phrases;
    this.rooms = named(survey.rooms(), Room::id, this::room);
    for (Room room : survey.rooms()) {
      String within = rooms.get(room.id());
      Map<String, String> here = new LinkedHashMap<>();
      here.putAll(named(room.coldSpots(), ColdSpot::id, this::spot));
      here.putAll(named(room.windows(), Window::id, this::window));
      here.putAll(named(room.walls(), Wall::id, this::wall));
      here.putAll(named(room.fans(), Fan::id, this::fan));
      here.forEach((id, name) -> places.put(id, phrases.say("place.in", name, within)));
    }
  }

  /** A room. */
  public String room(String id) {
    return rooms.getOrDefault(id, id);
  }

  /** A cold spot, window, wall or fan with its room; empty for what is none of them. */
  public Optional<String> place(String id) {
    return Optional.ofNullable(places.get(id));
  }

  private String room(Room room) {
    return room.name()
        .or(() -> phrases.find("room." + key(room.use().word())))
        .orElseGet(() -> Words.capital(room.id().replace('-', ' ').replace('_', ' ')));
  }

  private String spot(ColdSpot spot) {
    return spot.name()
        .or(() -> phrases.find("spot." + key(spot.kind().word())))
        .orElseGet(() -> spot.kind().word());
  }

  private String fan(Fan fan) {
    return fan.name()
        .or(() -> phrases.find("fan." + key(fan.kind().word())))
        .orElseGet(() -> Words.capital(fan.kind().word()));
  }

  private String wall(Wall wall) {
    return wall.name().orElseGet(() -> phrases.say("place.wall"));
  }

  private String window(Window window) {
    return window
        .name()
        .or(
            () ->
                window
                    .orientation()
                    .map(
                        o ->
                            phrases.say("place.window.to", phrases.say("orientation." + o.word()))))
        .orElseGet(() -> phrases.say("place.window"));
  }

  /** Names by id, told apart by their ids where two are alike. */
  private <T> Map<String, String> named(
      List<T> things, Function<T, String> id, Function<T, String> name) {
    Map<String, Long> alike =
        things.stream().collect(Collectors.groupingBy(name, Collectors.counting()));
    Map<String, String> names = new LinkedHashMap<>();
    for (T thing : things) {
      String called = Words.shortened(name.apply(thing), LONGEST);
      boolean alone = alike.get(name.apply(thing)) == 1;
      names.put(
          id.apply(thing), alone ? called : phrases.say("place.named", called, id.apply(thing)));
    }
    return names;
  }

  private static String key(String word) {
    return word.replace(' ', '-');
  }

  /** The first few names of a list, and how many more there are. */
  public String few(Stream<String> names, int most) {
    List<String> all = names.toList();
    String shown = all.stream().limit(most).collect(Collectors.joining(", "));
    int more = all.size() - most;
    return more > 0 ? phrases.say("more.after", shown, phrases.count("more", more)) : shown;
  }
}
