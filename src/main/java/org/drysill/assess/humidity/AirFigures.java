package org.drysill.assess.humidity;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/** The figures of air at one place, with their workings. */
final class AirFigures {
  private final String id;
  private final String where;
  private final Range temperature;
  private final MeasuredAir air;
  private final Basis basis;

  /**
   * Air at a place, as it was read.
   *
   * @param id start of the ids, such as {@code room.kitchen}
   * @param where the place, to follow "in" or "of"
   */
  AirFigures(String id, String where, MeasuredAir air) {
    this(id, where, air.temperature(), air, Basis.MEASURED);
  }

  private AirFigures(String id, String where, Range temperature, MeasuredAir air, Basis basis) {
    this.id = id;
    this.where = where;
    this.temperature = temperature;
    this.air = air;
    this.basis = basis;
  }

  /**
   * Outdoor air that nobody read. A single day may be warmer or colder than its month, and moister
   * or drier; the one does not make the other, so the vapour has its own spread alone.
   *
   * @param temperature with its spread [°C]
   * @param humidity what makes the vapour at the likely temperature, with the spread of that
   */
  static AirFigures assumed(String id, Range temperature, Range humidity) {
    return new AirFigures(
        id,
        "the outdoor air",
        temperature,
        new MeasuredAir(Range.exactly(temperature.likely()), humidity),
        Basis.ASSUMED);
  }

  Figure temperature() {
    return read("temperature", "Air temperature", temperature, Unit.CELSIUS);
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
                bounds("both errors at their worst together")));
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
                bounds("both errors at their worst together")));
  }

  private String bounds(String asRead) {
    return "Bounds: "
        + (basis == Basis.MEASURED
            ? asRead
            : "spread of single days, that of vapour at the likely temperature")
        + ".";
  }

  private Figure read(String suffix, String name, Range value, Unit unit) {
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
                Optional.of(bounds("accuracy of the instrument"))));
  }

  private static Working working(String formula, List<Input> inputs, Citation source, String note) {
    return new Working(formula, inputs, List.of(source), Optional.of(note));
  }
}
