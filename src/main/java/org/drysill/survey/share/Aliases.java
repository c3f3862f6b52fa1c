package org.drysill.survey.share;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Fan;
import org.drysill.survey.Instrument;
import org.drysill.survey.Room;
import org.drysill.survey.RoomUse;
import org.drysill.survey.Survey;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;
import org.drysill.yaml.NamedFiles;

/**
 * Neutral words for what a surveyor named: the same one for the same thing at both visits, by the
 * order in which things stand in the survey. Bedrooms become {@code bedroom-1}, {@code bedroom-2}.
 */
final class Aliases {
  private final Map<String, String> ids = new LinkedHashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();
  private final Map<String, String> instruments = new LinkedHashMap<>();
  private final Map<String, String> files = new LinkedHashMap<>();
  private final Map<String, String> addresses = new LinkedHashMap<>();
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<RoomUse, Set<String>> uses = new EnumMap<>(RoomUse.class);

  /** Words for all that some surveys of one home name. */
  Aliases(List<Survey> surveys) {
    for (Survey survey : surveys) {
      survey
          .rooms()
          .forEach(r -> uses.computeIfAbsent(r.use(), use -> new TreeSet<>()).add(r.id()));
    }
    surveys.forEach(this::add);
  }

  private void add(Survey survey) {
    survey.dwelling().address().ifPresent(this::address);
    for (Instrument instrument : survey.visit().instruments()) {
      instruments.computeIfAbsent(
          instrument.id(), id -> slug(instrument.kind().word()) + "-" + (instruments.size() + 1));
    }
    for (String path : NamedFiles.of(survey).values()) {
      files.computeIfAbsent(path, p -> "file " + (files.size() + 1));
    }
    survey.rooms().forEach(this::room);
  }

  private void room(Room room) {
    if (!ids.containsKey(room.id())) {
      String use = room.use().word();
      String number = uses.get(room.use()).size() > 1 ? " " + number(use) : "";
      ids.put(room.id(), slug(named(room.use()) + number));
      names.put(room.id(), capital(named(room.use())) + number);
    }
    String place = ids.get(room.id());
    items(place, "", room.windows(), Window::id, window -> "window");
    items(place, "", room.coldSpots(), ColdSpot::id, spot -> spot.kind().word());
    items(place, "", room.walls(), Wall::id, wall -> "wall");
    // Fans are spoken of by their names alone.
    items(place, names.get(room.id()) + " ", room.fans(), Fan::id, fan -> "fan");
  }

  private static String named(RoomUse use) {
    return switch (use) {
      case LIVING, DINING -> use.word() + " room";
      default -> use.word();
    };
  }

  private <T> void items(
      String room, String before, List<T> items, Function<T, String> id, Function<T, String> kind) {
    for (T item : items) {
      if (!ids.containsKey(id.apply(item))) {
        String word = kind.apply(item);
        String alias = room + "-" + slug(word);
        int number = number(alias);
        ids.put(id.apply(item), alias + "-" + number);
        names.put(id.apply(item), capital(before + word) + (number > 1 ? " " + number : ""));
      }
    }
  }

  private int number(String of) {
    return counts.merge(of, 1, Integer::sum);
  }

  /** The word for the short name of a room, window, cold spot, wall or fan. */
  String id(String id) {
    return ids.getOrDefault(id, "unknown");
  }

  /** The name of what has a short name. */
  String name(String id) {
    return names.getOrDefault(id, "Unnamed");
  }

  String instrument(String id) {
    return instruments.getOrDefault(id, "instrument");
  }

  String file(String path) {
    return files.getOrDefault(path, "file");
  }

  String address(String address) {
    return addresses.computeIfAbsent(
        plain(address),
        key -> addresses.isEmpty() ? "Address left out" : "Another address left out");
  }

  private static String plain(String address) {
    return address.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }

  private static String slug(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
