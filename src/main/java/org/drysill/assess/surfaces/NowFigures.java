package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The figures of a surface at the visit, with their workings.
 *
 * @param place the id of the place
 * @param air air temperature of the room [°C]
 * @param humidity relative humidity of the room [1]
 * @param vapour vapour pressure of the room [Pa]
 */
record NowFigures(String place, Range air, Range humidity, Range vapour) {
  private static final double SATURATED = 1;
  private static final List<Citation> PRESSURES =
      List.of(Citation.of("ISO 13788", "2012", "Annex E, saturation vapour pressure", How.MEMORY));

  /** A surface that was read. */
  Figure asRead(Range surface) {
    return figure(
        "surface_now",
        "surface temperature as read",
        surface,
        Unit.CELSIUS,
        Basis.MEASURED,
        "Tsi as read, coldest point",
        List.of());
  }

  /** A surface that was not read, from its factor and the outdoor reading [°C]. */
  Figure fromFactor(Figure factor, Range outdoor) {
    Range f = factor.value();
    Range surface =
        new Range(
            TemperatureFactor.surfaceCelsius(f.low(), air.low(), outdoor.low()),
            TemperatureFactor.surfaceCelsius(f.likely(), air.likely(), outdoor.likely()),
            TemperatureFactor.surfaceCelsius(f.high(), air.high(), outdoor.high()));
    return figure(
        "surface_now",
        "surface temperature at the visit",
        surface,
        Unit.CELSIUS,
        factor.basis() == Basis.ASSUMED ? Basis.ASSUMED : Basis.CALCULATED,
        "Tsi = Te + f · (Ti - Te)",
        List.of(
            Input.of("f", factor),
            Input.of("Te", "outdoor air", outdoor, Unit.CELSIUS, Basis.MEASURED),
            airInput()));
  }

  /** All figures of the moment; no colder weather than {@code coldest} [°C] is named. */
  SurfaceNow now(Figure surface, Figure factor, double coldest) {
    Figure dewPoint = dewPoint();
    return new SurfaceNow(
        dewPoint,
        surface,
        margin(surface, dewPoint),
        surfaceHumidity(surface),
        wetBelow(factor, coldest));
  }

  private Figure dewPoint() {
    Range range =
        new Range(
            Iso13788Vapour.dewPointCelsius(vapour.low()),
            Iso13788Vapour.dewPointCelsius(vapour.likely()),
            Iso13788Vapour.dewPointCelsius(vapour.high()));
    return figure(
        "dew_point_now",
        "dew point of the room's air",
        range,
        Unit.CELSIUS,
        Basis.MEASURED,
        "T_d = T(φ · ps(Ti))",
        List.of(airInput(), humidityInput()));
  }

  private Figure margin(Figure surface, Figure dewPoint) {
    return figure(
        "margin_now",
        "surface above dew point",
        surface.value().minus(dewPoint.value()),
        Unit.KELVIN,
        surface.basis(),
        "Tsi - T_d",
        List.of(Input.of("Tsi", surface), Input.of("T_d", dewPoint)));
  }

  private Figure surfaceHumidity(Figure surface) {
    Range s = surface.value();
    Range range =
        new Range(
            Iso13788Surface.humidity(vapour.low(), s.high()),
            Iso13788Surface.humidity(vapour.likely(), s.likely()),
            Iso13788Surface.humidity(vapour.high(), s.low()));
    return figure(
        "humidity_now",
        "humidity at the surface",
        range,
        Unit.RELATIVE_HUMIDITY,
        surface.basis(),
        "φsi = φ · ps(Ti) / ps(Tsi)",
        List.of(Input.of("Tsi", surface), airInput(), humidityInput()));
  }

  private Optional<Figure> wetBelow(Figure factor, double coldest) {
    Range f = factor.value();
    double low = onset(vapour.low(), f.high(), coldest);
    double likely = onset(vapour.likely(), f.likely(), coldest);
    double high = onset(vapour.high(), f.low(), coldest);
    if (likely <= coldest) {
      return Optional.empty();
    }
    return Optional.of(
        figure(
            "wet_below",
            "outdoor temperature at which water first appears",
            new Range(low, likely, high),
            Unit.CELSIUS,
            factor.basis() == Basis.ASSUMED ? Basis.ASSUMED : Basis.CALCULATED,
            "Te = (T_d - f · Ti) / (1 - f)",
            List.of(Input.of("f", factor), airInput(), humidityInput())));
  }

  private double onset(double vapourPa, double factor, double coldest) {
    OptionalDouble onset =
        Iso13788Surface.onsetOutdoorCelsius(vapourPa, SATURATED, air.likely(), factor);
    return Math.max(coldest, onset.orElse(coldest));
  }

  private Input airInput() {
    return Input.of("Ti", "room air", air, Unit.CELSIUS, Basis.MEASURED);
  }

  private Input humidityInput() {
    return Input.of("φ", "humidity of the room", humidity, Unit.RELATIVE_HUMIDITY, Basis.MEASURED);
  }

  private Figure figure(
      String id,
      String name,
      Range value,
      Unit unit,
      Basis basis,
      String formula,
      List<Input> inputs) {
    return new Figure(
        "surface." + place + "." + id,
        name,
        value,
        unit,
        basis,
        () -> new Working(formula, inputs, PRESSURES, Optional.empty()));
  }
}
