package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.PlaceKind;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.fit.LogNormal;
import org.drysill.reference.Sourced;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/**
 * The panes of a home on which vapour settles: by the temperature factor of the middle of each pane
 * and the temperatures of the visit. Windows without size, and panes whose factor is not known,
 * take nothing.
 */
final class Glass {
  private final double celsius;
  private final LogNormal factor;
  private final double film;
  private final List<Piece> pieces = new ArrayList<>();

  private record Piece(String window, int room, double areaM2, double saturation) {}

  /**
   * The panes.
   *
   * @param visit temperatures and outdoor vapour of the visit
   * @param share glass by the area of an opening
   * @param film convective film coefficient of a pane [W/(m²·K)]
   */
  Glass(Layout layout, CondensationResult surfaces, VisitAir visit, Sourced share, Sourced film) {
    celsius = visit.celsius();
    this.film = film.likely() * share.likely();
    factor = LogNormal.of(share.range().times(film.range()).times(1 / this.film));
    for (ColdPlace place : surfaces.places()) {
      if (place.kind() == PlaceKind.PANE_CENTRE) {
        add(layout, place, visit);
      }
    }
  }

  /** How much more or less water they take than is likely: a factor around 1. */
  LogNormal factor() {
    return factor;
  }

  /** The panes, at a factor. */
  List<Pane> panes(double times) {
    return pieces.stream().map(p -> Pane.of(p.room(), p.areaM2() * times, film, celsius)).toList();
  }

  /** The temperature at which contents are counted [°C]. */
  double celsius() {
    return celsius;
  }

  /** The survey's id of the window of a pane. */
  String window(int pane) {
    return pieces.get(pane).window();
  }

  /** Saturation of each pane over the air outdoors [kg/m³]. */
  double[] saturation() {
    return pieces.stream().mapToDouble(Piece::saturation).toArray();
  }

  private void add(Layout layout, ColdPlace place, VisitAir visit) {
    for (int i = 0; i < layout.rooms().size(); i++) {
      RoomFacts room = layout.rooms().get(i);
      if (room.id().equals(place.room())) {
        int zone = i;
        double surface =
            TemperatureFactor.surfaceCelsius(
                place.factor().figure().likely(), visit.celsius(room), visit.outdoorCelsius());
        double over = Iso13788Vapour.saturationPressurePa(surface) - visit.outdoorPa();
        room.room().windows().stream()
            .filter(w -> w.id().equals(place.item()))
            .flatMap(w -> area(w).stream())
            .forEach(a -> pieces.add(new Piece(place.item(), zone, a, content(Math.max(0, over)))));
      }
    }
  }

  private double content(double pressure) {
    return MoistAir.vapourContentKgM3(celsius, pressure);
  }

  private static Optional<Double> area(Window window) {
    return window
        .width()
        .map(Quantity::value)
        .flatMap(w -> window.height().map(h -> w * h.value()));
  }
}
