package org.drysill.assess.ventilation.rooms;

import java.util.List;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Airflow;
import org.drysill.physics.flow.LeakagePowerLaw;
import org.drysill.physics.flow.Orifice;
import org.drysill.physics.network.AirPath;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Window;
import org.drysill.survey.YesNo;
import org.drysill.yaml.Quantity;

/**
 * The leaks and background ventilators of each room. The leaks of the home are spread by the air
 * volume of its rooms, those without outside wall or window at a lesser share.
 */
final class Cracks {
  /** The pressure difference at which air leakage is stated; EN ISO 9972:2015 [Pa]. */
  private static final double TEST_PA = 50;

  private final List<Place> places;
  private final Home home;
  private final VentilationDefaults defaults;
  private final double weights;

  Cracks(List<Place> places, Home home, VentilationDefaults defaults) {
    this.places = places;
    this.home = home;
    this.defaults = defaults;
    this.weights = places.stream().mapToDouble(this::weight).sum();
  }

  /** Share of a place in the leaks of the home [1]. */
  double share(Place place) {
    return weight(place) / weights;
  }

  private double weight(Place place) {
    return place
        .facts()
        .map(room -> room.volume().likely() * (isInner(room) ? innerShare() : 1))
        .orElse(0.0);
  }

  private double innerShare() {
    return defaults.roomAir().innerRoom().value().value();
  }

  /** Recorded as without outside wall, and without a window. */
  static boolean isInner(RoomFacts room) {
    return room.room().windows().isEmpty()
        && room.room().externalWall().filter(wall -> wall == YesNo.NO).isPresent();
  }

  /** The leaks of a place, half of all its cracks. */
  AirPath halfOfLeaks(int place, Case at) {
    double flow =
        Airflow.ofAirChange(at.of(home.n50().value()), at.of(home.volume().value())).m3PerSecond();
    LeakagePowerLaw law =
        LeakagePowerLaw.through(flow, TEST_PA, defaults.roomAir().leakageExponent().value());
    return AirPath.of(law, share(places.get(place)) / 2);
  }

  /** The background ventilators of a place, half of them. */
  AirPath halfOfVentilators(int place, Case at) {
    double area =
        places.get(place).facts().stream()
            .flatMap(room -> room.room().windows().stream())
            .mapToDouble(window -> areaM2(window, at))
            .sum();
    return AirPath.of(
        new Orifice(defaults.ventilators().discharge(), area / 2),
        defaults.ventilators().airDensity());
  }

  /** As in the sum for the whole home: where nobody looked likely none, and at worst shut. */
  private double areaM2(Window window, Case at) {
    Quantity unseen = defaults.ventilators().notLookedAt();
    return switch (at) {
      case LOW -> 0;
      case LIKELY -> window.backgroundVentilator().map(Quantity::value).orElse(unseen.low());
      case HIGH -> window.backgroundVentilator().orElse(unseen).high();
    };
  }
}
