package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.physics.Range;
import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The figures of a surface at the visit, with their workings.
 *
 * <p>The air temperature stands in the dew point and again in the surface that follows from a
 * factor. It is one reading with one error, so each bound takes it at the same end in both.
 *
 * @param place the id of the place
 * @param air the room's air as it was read
 */
record NowFigures(String place, MeasuredAir air) {
  private static final double SATURATED = 1;
  private static final List<Citation> PRESSURES =
      List.of(Citation.of("ISO 13788", "2012", "Annex E, saturation vapour pressure", How.MEMORY));

  /**
   * A surface and how its temperature [°C] hangs on that of the room's air.
   *
   * @param figure the surface with all its errors
   * @param coldest at the cold end of everything but the air
   * @param likely as is likely
   * @param warmest at the warm end of everything but the air
   */
  record Surface(
      Figure figure,
      DoubleUnaryOperator coldest,
      DoubleUnaryOperator likely,
      DoubleUnaryOperator warmest) {}

  /** A surface that was read: with a thermometer of its own. */
  Surface asRead(Range surface) {
    Figure figure =
        figure(
            "surface_now",
            "surface temperature as read",
            surface,
            Unit.CELSIUS,
            Basis.MEASURED,
            "Tsi as read, coldest point",
            List.of());
    return new Surface(figure, t -> surface.low(), t -> surface.likely(), t -> surface.high());
  }

  /**
   * A surface that was not read, from its factor and the outdoor reading [°C]. Where it is warmer
   * indoors a higher factor makes it warmer; where it is warmer outdoors, colder.
   */
  Surface fromFactor(Figure factor, Range outdoor) {
    Range f = factor.value();
    DoubleUnaryOperator coldest =
        t ->
            Math.min(
                TemperatureFactor.surfaceCelsius(f.low(), t, outdoor.low()),
                TemperatureFactor.surfaceCelsius(f.high(), t, outdoor.low()));
    DoubleUnaryOperator likely =
        t -> TemperatureFactor.surfaceCelsius(f.likely(), t, outdoor.likely());
    DoubleUnaryOperator warmest =
        t ->
            Math.max(
                TemperatureFactor.surfaceCelsius(f.low(), t, outdoor.high()),
                TemperatureFactor.surfaceCelsius(f.high(), t, outdoor.high()));
    Range celsius = air.temperature();
    Figure figure =
        figure(
            "surface_now",
            "surface temperature at the visit",
            new Range(
                coldest.applyAsDouble(celsius.low()),
                likely.applyAsDouble(celsius.likely()),
                warmest.applyAsDouble(celsius.high())),
            Unit.CELSIUS,
            factor.basis() == Basis.ASSUMED ? Basis.ASSUMED : Basis.CALCULATED,
            "Tsi = Te + f · (Ti - Te)",
            List.of(
                Input.of("f", factor),
                Input.of("Te", "outdoor air", outdoor, Unit.CELSIUS, Basis.MEASURED),
                airInput()));
    return new Surface(figure, coldest, likely, warmest);
  }

  /** All figures of the moment; no colder weather than {@code coldest} [°C] is named. */
  SurfaceNow now(Surface surface, Figure factor, double coldest) {
    Figure dewPoint = dewPoint();
    return new SurfaceNow(
        dewPoint,
        surface.figure(),
        margin(surface, dewPoint),
        surfaceHumidity(surface),
        wetBelow(factor, coldest));
  }

  /** Bounds of what hangs on the air temperature [°C]: the least and the most that it makes. */
  private Range overAir(
      DoubleUnaryOperator least, DoubleUnaryOperator likely, DoubleUnaryOperator most) {
    return new Range(
        atAirTemperatures(least).min().orElseThrow(),
        likely.applyAsDouble(air.temperature().likely()),
        atAirTemperatures(most).max().orElseThrow());
  }

  private DoubleStream atAirTemperatures(DoubleUnaryOperator value) {
    Range celsius = air.temperature();
    return DoubleStream.of(celsius.low(), celsius.likely(), celsius.high()).map(value);
  }

  private static double vapourPa(double celsius, double humidity) {
    return MoistAir.vapourPressurePa(celsius, humidity, HumidityReference.OVER_WATER);
  }

  private Figure dewPoint() {
    Range vapour = air.vapourPressure();
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

  private Figure margin(Surface surface, Figure dewPoint) {
    Range humidity = air.humidity();
    return figure(
        "margin_now",
        "surface above dew point",
        overAir(
            t -> surface.coldest().applyAsDouble(t) - dewPoint(t, humidity.high()),
            t -> surface.likely().applyAsDouble(t) - dewPoint(t, humidity.likely()),
            t -> surface.warmest().applyAsDouble(t) - dewPoint(t, humidity.low())),
        Unit.KELVIN,
        surface.figure().basis(),
        "Tsi - T_d",
        List.of(Input.of("Tsi", surface.figure()), Input.of("T_d", dewPoint)));
  }

  private static double dewPoint(double celsius, double humidity) {
    return Iso13788Vapour.dewPointCelsius(vapourPa(celsius, humidity));
  }

  private Figure surfaceHumidity(Surface surface) {
    Range humidity = air.humidity();
    return figure(
        "humidity_now",
        "humidity at the surface",
        overAir(
            t -> at(surface.warmest(), t, humidity.low()),
            t -> at(surface.likely(), t, humidity.likely()),
            t -> at(surface.coldest(), t, humidity.high())),
        Unit.RELATIVE_HUMIDITY,
        surface.figure().basis(),
        "φsi = φ · ps(Ti) / ps(Tsi)",
        List.of(Input.of("Tsi", surface.figure()), airInput(), humidityInput()));
  }

  private static double at(DoubleUnaryOperator surface, double celsius, double humidity) {
    return Iso13788Surface.humidity(vapourPa(celsius, humidity), surface.applyAsDouble(celsius));
  }

  private Optional<Figure> wetBelow(Figure factor, double coldest) {
    Range f = factor.value();
    Range humidity = air.humidity();
    Range onset =
        overAir(
            t -> onset(t, humidity.low(), f.high(), coldest),
            t -> onset(t, humidity.likely(), f.likely(), coldest),
            t -> onset(t, humidity.high(), f.low(), coldest));
    if (onset.likely() <= coldest) {
      return Optional.empty();
    }
    return Optional.of(
        figure(
            "wet_below",
            "outdoor temperature at which water first appears",
            onset,
            Unit.CELSIUS,
            factor.basis() == Basis.ASSUMED ? Basis.ASSUMED : Basis.CALCULATED,
            "Te = (T_d - f · Ti) / (1 - f)",
            List.of(Input.of("f", factor), airInput(), humidityInput())));
  }

  private static double onset(double celsius, double humidity, double factor, double coldest) {
    OptionalDouble onset =
        Iso13788Surface.onsetOutdoorCelsius(
            vapourPa(celsius, humidity), SATURATED, celsius, factor);
    return Math.max(coldest, onset.orElse(coldest));
  }

  private Input airInput() {
    return Input.of("Ti", "room air", air.temperature(), Unit.CELSIUS, Basis.MEASURED);
  }

  private Input humidityInput() {
    return Input.of(
        "φ", "humidity of the room", air.humidity(), Unit.RELATIVE_HUMIDITY, Basis.MEASURED);
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
