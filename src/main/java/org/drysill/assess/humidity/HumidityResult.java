package org.drysill.assess.humidity;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * What the readings of a visit say about the air of the home.
 *
 * @param readings one entry for each room reading that has a humidity, in the order of the survey
 * @param co2 one entry for each room reading that has a CO₂ concentration
 * @param home the home as a whole; empty where no heated room has a humidity reading
 * @param findings readings against thresholds and criteria; what has not been read, too
 * @param assumptions what was taken for granted, such as the accuracy of an instrument
 */
public record HumidityResult(
    List<RoomAir> readings,
    List<Co2Air> co2,
    Optional<HomeAir> home,
    List<Finding> findings,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public HumidityResult {
    readings = List.copyOf(readings);
    co2 = List.copyOf(co2);
    findings = List.copyOf(findings);
    assumptions = List.copyOf(assumptions);
  }

  /** The readings of a room, in the order of the survey. */
  public List<RoomAir> of(String room) {
    return readings.stream().filter(r -> r.room().equals(room)).toList();
  }

  /**
   * The mean air of the heated rooms that were read, weighted by volume.
   *
   * @param temperature mean temperature [°C]
   * @param vapourPressure mean vapour pressure [Pa]
   * @param excess mean vapour excess over outdoors, ISO 13788 definition [kg/m³]
   * @param excessPressure mean vapour pressure excess over outdoors [Pa]
   * @param excessPressureUnread the same for rooms that were not read: its bounds are those of the
   *     driest and of the dampest room that was read [Pa]
   * @param outdoorTemperature mean outdoor temperature at which these readings were taken [°C]
   * @param simultaneous true where every reading behind it has an outdoor reading of the same
   *     visit; where false the outdoor air is a climate's month and the excess a rough guess
   * @param rooms ids of the rooms behind it
   */
  public record HomeAir(
      Figure temperature,
      Figure vapourPressure,
      Figure excess,
      Figure excessPressure,
      Figure excessPressureUnread,
      Figure outdoorTemperature,
      boolean simultaneous,
      List<String> rooms) {
    /** Copies the list. */
    public HomeAir {
      rooms = List.copyOf(rooms);
    }
  }
}
