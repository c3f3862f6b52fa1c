package org.drysill.assess.change;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;

/** The figures of a comparison of two states of air, with their workings. */
final class AirChangeFigures {
  private static final String TEMPERATURE = "½ (p1 + p2) (1/ps(T2) − 1/ps(T1))";
  private static final String MOISTURE = "½ (p2 − p1) (1/ps(T1) + 1/ps(T2))";

  private final AirComparison compared;
  private final AirState before;
  private final AirState after;

  AirChangeFigures(AirComparison compared) {
    this.compared = compared;
    this.before = compared.before();
    this.after = compared.after();
  }

  Figure temperatureBefore() {
    return state("temperature_before", "Temperature before", before.temperature(), Unit.CELSIUS);
  }

  Figure temperatureAfter() {
    return state("temperature_after", "Temperature after", after.temperature(), Unit.CELSIUS);
  }

  Figure fromTemperature() {
    double value = compared.split().fromTemperature();
    return part("from_temperature", "Part of the temperature", value, TEMPERATURE);
  }

  Figure fromMoisture() {
    double value = compared.split().fromMoisture();
    return part("from_moisture", "Part of the moisture", value, MOISTURE);
  }

  Figure humidityBefore() {
    return state("humidity_before", "Humidity before", before.humidity(), Unit.RELATIVE_HUMIDITY);
  }

  Figure humidityAfter() {
    return state("humidity_after", "Humidity after", after.humidity(), Unit.RELATIVE_HUMIDITY);
  }

  Figure excessBefore() {
    return state("excess_before", "Vapour excess before", before.excess(), Unit.PASCAL);
  }

  Figure excessAfter() {
    return state("excess_after", "Vapour excess after", after.excess(), Unit.PASCAL);
  }

  Figure points() {
    double likely = after.humidity().likely() - before.humidity().likely();
    double error = Math.hypot(before.humidityError(), after.humidityError());
    return difference(
        "humidity_points",
        "Change of relative humidity",
        Range.around(likely, error),
        Unit.PERCENTAGE_POINT,
        "φ2 − φ1",
        humidityBefore(),
        humidityAfter());
  }

  Figure relative() {
    double first = before.humidity().likely();
    double second = after.humidity().likely();
    double error =
        Math.hypot(
            after.humidityError() / first, second * before.humidityError() / (first * first));
    return difference(
        "humidity_relative",
        "Change of relative humidity as a share of what it was",
        Range.around((second - first) / first, error),
        Unit.PERCENT,
        "(φ2 − φ1) / φ1",
        humidityBefore(),
        humidityAfter());
  }

  Figure excessChange() {
    double likely = after.excess().likely() - before.excess().likely();
    return difference(
        "excess_change",
        "Change of the vapour excess",
        Range.around(likely, compared.excessError()),
        Unit.PASCAL,
        "Δp2 − Δp1",
        excessBefore(),
        excessAfter());
  }

  private Figure state(String suffix, String what, Range value, Unit unit) {
    return new Figure(
        figureId(suffix),
        what + " in " + place(),
        value,
        unit,
        Basis.CALCULATED,
        () ->
            new Working(
                "mean of the readings of the visit",
                List.of(),
                List.of(),
                Optional.of("See the humidity chapter of that visit.")));
  }

  private Figure part(String suffix, String what, double value, String formula) {
    return new Figure(
        figureId(suffix),
        what + " in the change of humidity in " + place(),
        Range.exactly(value),
        Unit.PERCENTAGE_POINT,
        Basis.CALCULATED,
        () ->
            new Working(
                formula,
                List.of(
                    input("T1", "Temperature before", before.temperature(), Unit.CELSIUS),
                    input("T2", "Temperature after", after.temperature(), Unit.CELSIUS),
                    input("p1", "Vapour pressure before", before.pressure(), Unit.PASCAL),
                    input("p2", "Vapour pressure after", after.pressure(), Unit.PASCAL)),
                List.of(),
                Optional.of("Mean of the two orders of the changes; the parts add to the whole.")));
  }

  private static Input input(String symbol, String name, Range value, Unit unit) {
    return Input.of(symbol, name, value, unit, Basis.CALCULATED);
  }

  private Figure difference(
      String suffix,
      String what,
      Range value,
      Unit unit,
      String formula,
      Figure first,
      Figure second) {
    return new Figure(
        figureId(suffix),
        what + " in " + place(),
        value,
        unit,
        Basis.CALCULATED,
        () ->
            new Working(
                formula,
                List.of(Input.of("1", first), Input.of("2", second)),
                List.of(),
                Optional.of("Bounds: errors of the two visits as root of the sum of squares.")));
  }

  private String figureId(String suffix) {
    return "change." + (isHome() ? "home" : "room." + compared.id()) + "." + suffix;
  }

  private String place() {
    return "the " + compared.name();
  }

  private boolean isHome() {
    return compared.id().equals("home");
  }
}
