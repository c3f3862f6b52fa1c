package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.RoomAir;
import org.drysill.physics.Range;
import org.drysill.physics.air.MoistAir;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The vapour excess that was read in a room, counted at the mean temperature of the home. Readings
 * of a room count as one; their errors are those of the instruments and do not shrink.
 *
 * @param room index of the room
 * @param measured the excess with its error [kg/m³]
 * @param outdoorError standard error by the outdoor reading, common to all rooms [kg/m³]
 * @param instrumentError standard error by the hygrometer indoors, common to all rooms [kg/m³]
 */
record Reading(int room, Figure measured, double outdoorError, double instrumentError) {
  private static final Citation SOURCE =
      Citation.of(
          "ISO 13788", "2012", "Annex A, outdoor air counted at indoor temperature", How.MEMORY);

  /** An accuracy is a bound within which every error is as likely (JCGM 100, 4.3.7; memory). */
  private static final double RECTANGLE = Math.sqrt(3);

  /** The readings of the heated rooms. */
  static List<Reading> all(Layout layout, VisitAir visit, Figure homeTemperature) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < layout.rooms().size(); i++) {
      RoomFacts room = layout.rooms().get(i);
      List<RoomAir> airs = visit.of(room);
      if (!airs.isEmpty()) {
        readings.add(of(i, room, airs, homeTemperature));
      }
    }
    return readings;
  }

  /** The excess [kg/m³]. */
  double excess() {
    return measured.likely();
  }

  private static Reading of(int index, RoomFacts room, List<RoomAir> airs, Figure temperature) {
    double celsius = temperature.likely();
    double mean = airs.stream().mapToDouble(a -> a.excessPressure().likely()).average().orElse(0);
    double error = airs.stream().mapToDouble(RoomAir::excessPressureError).max().orElse(0);
    double outdoors = airs.stream().mapToDouble(VisitAir::outdoorErrorPa).max().orElse(0);
    double indoors = Math.sqrt(Math.max(0, error * error - outdoors * outdoors));
    double perPascal = MoistAir.vapourContentKgM3(celsius, 1);
    return new Reading(
        index,
        figure(room, airs, temperature, Range.around(mean, error).times(perPascal)),
        outdoors * perPascal / RECTANGLE,
        indoors * perPascal / RECTANGLE);
  }

  private static Figure figure(
      RoomFacts room, List<RoomAir> airs, Figure temperature, Range excess) {
    return new Figure(
        "model.room." + room.id() + ".measured",
        "vapour excess read in the " + room.name() + ", at the mean temperature of the home",
        excess,
        Unit.VAPOUR_CONTENT,
        Basis.MEASURED,
        () -> {
          List<Input> inputs = new ArrayList<>();
          airs.forEach(a -> inputs.add(Input.of("Δp", a.excessPressure())));
          inputs.add(Input.of("T", temperature));
          return new Working(
              "Δv = mean Δp / (461.5 × (T + 273.15))", inputs, List.of(SOURCE), Optional.empty());
        });
  }
}
