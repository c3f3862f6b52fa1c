package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.cautions.CautionFacts;
import org.drysill.survey.ApplianceKind;
import org.drysill.survey.CombustionAppliance;
import org.drysill.survey.Fuel;
import org.drysill.survey.Heating;

/** What burns fuel in a home, and how it breathes. */
final class Appliances {
  private Appliances() {}

  static boolean openFlued(ApplianceKind kind) {
    return switch (kind) {
      case OPEN_FLUED_FIRE, OPEN_FLUED_BOILER, SOLID_FUEL_STOVE -> true;
      case ROOM_SEALED_BOILER, UNFLUED_HEATER, GAS_HOB -> false;
    };
  }

  static List<CombustionAppliance> openFlued(Home home) {
    return all(home).stream().filter(a -> openFlued(a.kind())).toList();
  }

  static List<CombustionAppliance> of(Home home, ApplianceKind kind) {
    return all(home).stream().filter(a -> a.kind() == kind).toList();
  }

  static List<CombustionAppliance> all(Home home) {
    return home.survey().dwelling().combustionAppliances();
  }

  /** Nothing is listed although the home may well burn something. */
  static boolean notTold(Home home) {
    return all(home).isEmpty()
        && home.survey()
            .dwelling()
            .heating()
            .flatMap(Heating::fuel)
            .map(Appliances::burns)
            .orElse(true);
  }

  private static boolean burns(Fuel fuel) {
    return switch (fuel) {
      case MAINS_GAS, LPG, OIL, PARAFFIN, SOLID_FUEL -> true;
      case ELECTRICITY, HEAT_PUMP, DISTRICT_HEAT -> false;
    };
  }

  /** Rooms whose moisture sources name a heater without a flue. */
  static List<String> unfluedSources(Home home, CautionFacts facts) {
    return home.rooms().stream()
        .filter(r -> r.room().moistureSources().stream().anyMatch(s -> unflued(s.kind(), facts)))
        .map(RoomFacts::id)
        .toList();
  }

  private static boolean unflued(String kind, CautionFacts facts) {
    return NoteWords.find(kind, facts.unfluedWords(), List.of()).isPresent();
  }

  static List<String> rooms(List<CombustionAppliance> appliances) {
    return appliances.stream().map(CombustionAppliance::room).flatMap(Optional::stream).toList();
  }

  /** Such as {@code an open-flued fire and a gas hob}. */
  static String words(List<CombustionAppliance> appliances) {
    List<String> kinds = appliances.stream().map(a -> article(a.kind().word())).distinct().toList();
    return String.join(" and ", kinds);
  }

  private static String article(String word) {
    return (Stream.of("a", "e", "i", "o", "u").anyMatch(word::startsWith) ? "an " : "a ") + word;
  }
}
