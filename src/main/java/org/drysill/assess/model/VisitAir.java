package org.drysill.assess.model;

import java.util.List;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.assess.humidity.OutdoorAir;
import org.drysill.assess.humidity.RoomAir;

/**
 * Temperatures and outdoor vapour of the visit; only readings with outdoor air beside them count.
 */
final class VisitAir {
  private final HomeAir home;
  private final HumidityResult humidity;

  VisitAir(HomeAir home, HumidityResult humidity) {
    this.home = home;
    this.humidity = humidity;
  }

  /** At which all contents are counted: the mean of the home [°C]. */
  double celsius() {
    return home.temperature().likely();
  }

  /** Outdoor temperature [°C]. */
  double outdoorCelsius() {
    return home.outdoorTemperature().likely();
  }

  /** Vapour pressure outdoors [Pa]. */
  double outdoorPa() {
    return home.vapourPressure().likely() - home.excessPressure().likely();
  }

  /** The readings of a room. */
  List<RoomAir> of(RoomFacts room) {
    return humidity.of(room.id()).stream().filter(r -> r.outdoor().simultaneous()).toList();
  }

  /** Temperature of a room, read or else usual [°C]. */
  double celsius(RoomFacts room) {
    return of(room).stream()
        .mapToDouble(r -> r.temperature().likely())
        .average()
        .orElse(room.setpoint().likely());
  }

  /** Error of a reading's outdoor vapour pressure, plus or minus [Pa]. */
  static double outdoorErrorPa(RoomAir reading) {
    OutdoorAir air = reading.outdoor();
    return new MeasuredAir(air.temperature().value(), air.relativeHumidity().value())
        .vapourPressureError();
  }
}
