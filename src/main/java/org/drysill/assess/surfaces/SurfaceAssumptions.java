package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.surfaces.factor.FactorSource;
import org.drysill.reference.Citation;
import org.drysill.reference.Sourced;
import org.drysill.reference.surfaces.MaterialSensitivity;
import org.drysill.reference.surfaces.SurfaceDefaults;
import org.drysill.reference.surfaces.SurfaceTables;

/** What the assessment of surfaces took for granted. */
final class SurfaceAssumptions {
  private final SurfaceTables tables;
  private final SurfaceDefaults defaults;

  SurfaceAssumptions(SurfaceTables tables) {
    this.tables = tables;
    this.defaults = tables.defaults();
  }

  /** All that the places rest on, one entry for each id. */
  List<Assumption> of(List<ColdPlace> places, boolean made) {
    List<Assumption> found = new ArrayList<>();
    if (!places.isEmpty()) {
      found.add(summer());
      found.add(memory());
      if (made) {
        found.add(madeHours());
      }
    }
    if (places.stream().anyMatch(p -> p.surface() == SurfaceClass.GLASS)) {
      found.add(coldNights());
    }
    unknownSurfaces(places).ifPresent(found::add);
    typical(places).ifPresent(found::add);
    unknownGlazing(places).ifPresent(found::add);
    return List.copyOf(found);
  }

  private Assumption summer() {
    Sourced rise = defaults.freeRunningRise();
    return of(
        "surface.free_running",
        "Indoor temperature in warm months",
        "the set point, but at least %s K above the outdoor mean"
            .formatted(Words.number(rise.likely())),
        "nobody cools the home",
        "Log the indoor temperature through a year.",
        rise.source());
  }

  private Assumption memory() {
    Sourced memory = tables.hours().memory();
    return of(
        "surface.memory",
        "How fast walls and the moisture of rooms follow the weather",
        "the mean of the last %s hours outdoors; panes follow the hour"
            .formatted(Words.whole(memory.likely())),
        "nothing was logged",
        "Log a cold surface, the room and the outdoor air for a fortnight.",
        memory.source());
  }

  private Assumption madeHours() {
    return of(
        "surface.made_hours",
        "Outdoor air hour by hour",
        "made from the monthly means, which it keeps: a daily course and the departures of days",
        "only monthly means are known; it is no weather that was",
        "Use an hourly weather file of the place.",
        tables.hours().weather().winterSpread().source());
  }

  private Assumption coldNights() {
    Sourced drop = defaults.coldNightDrop();
    return of(
        "surface.cold_nights",
        "Cold nights that glass is judged on",
        "%s K below the mean of the month, %s humidity outdoors"
            .formatted(
                Words.number(drop.likely()), Words.percent(defaults.coldNightHumidity().likely())),
        "only monthly means are known",
        "Use an hourly weather file of the place.",
        drop.source());
  }

  private Optional<Assumption> unknownSurfaces(List<ColdPlace> places) {
    MaterialSensitivity unknown = tables.hours().unknownSurface();
    List<String> names =
        places.stream()
            .filter(p -> p.year().either(wall -> wall.material().equals(unknown), glass -> false))
            .map(ColdPlace::name)
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            of(
                "surface.mould_sensitivity",
                "How readily mould grows on surfaces of which nobody noted the material",
                unknown.sensitivity().word()
                    + ", like paper or planed wood, for "
                    + String.join(", ", names),
                "paint, paste and dust feed mould",
                "Note what the room side is made of: painted plaster, wallpaper, tiles, bare masonry.",
                unknown.source()));
  }

  private Optional<Assumption> typical(List<ColdPlace> places) {
    List<String> names =
        places.stream()
            .filter(p -> p.factor().source() == FactorSource.TYPICAL_DETAIL)
            .map(ColdPlace::name)
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            of(
                "surface.typical_details",
                "Temperature factors of places that were not read",
                "typical details for " + String.join(", ", names),
                "nothing usable was read there",
                "Read these surfaces on a cold day.",
                tables.details().source()));
  }

  private Optional<Assumption> unknownGlazing(List<ColdPlace> places) {
    List<String> names =
        places.stream()
            .filter(p -> p.kindWords().equals(tables.glazing().unknown().words()))
            .map(ColdPlace::name)
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            of(
                "surface.glazing",
                "Glazing that the survey does not name",
                "anything from single to coated double for " + String.join(", ", names),
                "nobody noted it",
                "Note the kind of glazing: panes, spacer, coating.",
                tables.glazing().unknown().source()));
  }

  private static Assumption of(
      String id, String about, String assumed, String why, String better, Citation source) {
    return new Assumption(id, about, assumed, why, better, source);
  }
}
