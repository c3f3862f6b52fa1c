package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says once of each kind of pane where it can never stay dry. */
final class NeverDry {
  private NeverDry() {}

  static List<String> of(List<ColdPlace> places, double livable) {
    Map<String, List<ColdPlace>> byKind = new LinkedHashMap<>();
    places.stream()
        .filter(p -> p.neverDry().isPresent())
        .forEach(p -> byKind.computeIfAbsent(p.kindWords(), k -> new ArrayList<>()).add(p));
    return byKind.entrySet().stream()
        .map(e -> sentence(e.getKey(), e.getValue(), livable))
        .toList();
  }

  private static String sentence(String kind, List<ColdPlace> places, double livable) {
    List<Double> dry =
        places.stream().map(p -> p.months().lowestDryHumidity().likely()).sorted().toList();
    String least = Words.percent(dry.get(0));
    String most = Words.percent(dry.get(dry.size() - 1));
    String rooms =
        places.stream()
            .map(ColdPlace::roomName)
            .distinct()
            .sorted(Comparator.naturalOrder())
            .collect(Collectors.joining(", "));
    return "%s can never stay dry at a humidity that people live in (%s): on a cold night it would need less than %s indoors, and a lived-in home seldom stays below %s."
        .formatted(
            Words.capital(kind),
            rooms,
            least.equals(most) ? least : least + " to " + most,
            Words.percent(livable));
  }
}
