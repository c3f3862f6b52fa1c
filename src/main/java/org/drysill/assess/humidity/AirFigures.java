package org.drysill.assess.humidity;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.reference.Citation;

/** The figures of air at one place, with their workings. */
final class AirFigures {
  private final String id;
  private final String where;
  private final MeasuredAir air;
  private final Basis basis;

  /**
   * Air at a place.
   *
   * @param id start of the ids, such as {@code room.kitchen}
   * @param where the place, to follow "in" or "of"
   */
  AirFigures(String id, String where, MeasuredAir air, Basis basis) {
    this.id = id;
    this.where = where;
    this.air = air;
    this.basis = basis;
  }

  Figure temperature() {
    return read("temperature", "Air temperature", air.temperature(), Unit.CELSIUS);
  }

  Figure humidity() {
    return read("relative_humidity", "Relative humidity", air.humidity(), Unit.RELATIVE_HUMIDITY);
  }

  Figure vapourPressure() {
    return new Figure(
        id + ".vapour_pressure",
        "Vapour pressure of " + where,
        air.vapourPressure(),
        Unit.PASCAL,
        basis,
        () ->
            working(
                "p = φ × 610.5 × exp(17.269 T / (237.3 + T))",
                List.of(Input.of("T", temperature()), Input.of("φ", humidity())),
                Sources.SATURATION,
                "Bounds: both errors at their worst together."));
  }

  Figure dewPoint() {
    return new Figure(
        id + ".dew_point",
        "Dew point of " + where,
        air.dewPoint(),
        Unit.CELSIUS,
        basis,
        () ->
            working(
                "Td = 237.3 L / (17.269 − L), L = ln(p / 610.5); 265.5 and 21.875 below 0 °C",
                List.of(Input.of("p", vapourPressure())),
                Sources.SATURATION,
                "Below 0 °C this is the frost point."));
  }

  Figure vapourContent() {
    return new Figure(
        id + ".vapour_content",
        "Vapour content of " + where,
        air.vapourContent(),
        Unit.VAPOUR_CONTENT,
        basis,
        () ->
            working(
                "v = p / (461.5 × (T + 273.15))",
                List.of(Input.of("p", vapourPressure()), Input.of("T", temperature())),
                Sources.GAS_LAW,
                "Bounds: both errors at their worst together."));
  }

  private Figure read(String suffix, String name, org.drysill.physics.Range value, Unit unit) {
    return new Figure(
        id + "." + suffix,
        name + " of " + where,
        value,
        unit,
        basis,
        () ->
            new Working(
                basis == Basis.MEASURED ? "as read" : "mean of the month",
                List.of(),
                List.of(),
                Optional.of("Bounds: accuracy of the instrument, or spread of single days.")));
  }

  private static Working working(String formula, List<Input> inputs, Citation source, String note) {
    return new Working(formula, inputs, List.of(source), Optional.of(note));
  }
}
