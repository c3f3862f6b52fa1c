package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.year.SurfaceYears;
import org.drysill.reference.glazing.Glazing;
import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.survey.Window;

/** Puts other kinds of glazing into the windows that get wet. */
final class GlazingChoices {
  private final GlazingCatalogue catalogue;
  private final FactorFinder factors;
  private final SurfaceYears years;
  private final VapourOfRooms vapour;

  GlazingChoices(
      GlazingCatalogue catalogue, FactorFinder factors, SurfaceYears years, VapourOfRooms vapour) {
    this.catalogue = catalogue;
    this.factors = factors;
    this.years = years;
    this.vapour = vapour;
  }

  /** What other glazing would do for the windows of a room that get wet. */
  List<OtherGlazing> of(RoomFacts room, List<ColdPlace> places) {
    List<OtherGlazing> found = new ArrayList<>();
    for (Window window : room.room().windows()) {
      wettest(window, places).ifPresent(now -> found.add(other(room, window, now)));
    }
    return found;
  }

  private record Now(ColdPlace place, Figure wetMornings) {}

  /** The part that is wet most often; empty where none may be wet on any morning. */
  private static Optional<Now> wettest(Window window, List<ColdPlace> places) {
    return places.stream()
        .filter(p -> p.item().equals(window.id()) && p.kind() != PlaceKind.FRAME)
        .flatMap(p -> wetMornings(p).map(wet -> new Now(p, wet)).stream())
        .filter(now -> now.wetMornings().value().high() > 0)
        .max(Comparator.comparingDouble(now -> now.wetMornings().likely()));
  }

  private static Optional<Figure> wetMornings(ColdPlace place) {
    return place.year().either(wall -> Optional.empty(), glass -> Optional.of(glass.wetMornings()));
  }

  private OtherGlazing other(RoomFacts room, Window window, Now now) {
    String name = now.place().name();
    return new OtherGlazing(
        window.id(),
        room.name(),
        name.substring(0, name.lastIndexOf(',')),
        now.place().kindWords(),
        now.wetMornings(),
        catalogue.upgradeKinds().stream()
            .filter(kind -> !has(window, kind))
            .map(kind -> choice(room, window, kind))
            .toList());
  }

  private boolean has(Window window, Glazing kind) {
    return window.glazing().flatMap(catalogue::find).filter(kind::equals).isPresent();
  }

  private OtherGlazing.Choice choice(RoomFacts room, Window window, Glazing kind) {
    String place =
        window.id() + ".with_" + kind.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
    return factors.ofOtherPane(place, window, kind).stream()
        .map(
            factor ->
                years.wetMornings(
                    new SurfaceYears.Place(
                        place, room, factor.figure(), vapour.of(room)::excessAt)))
        .max(Comparator.comparingDouble(Figure::likely))
        .map(wet -> new OtherGlazing.Choice(kind.name(), wet))
        .orElseThrow();
  }
}
