package org.drysill.assess.change.air;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.change.shown.Pair;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** The figures of a comparison of two states of air, with their workings. */
final class AirChangeFigures {
  private static final String TEMPERATURE = "½ (p1 + p2) (1/ps(T2) − 1/ps(T1))";
  private static final String MOISTURE = "½ (p2 − p1) (1/ps(T1) + 1/ps(T2))";
  private static final String OUTDOORS = "½ (pe2 − pe1) (1/ps(T1) + 1/ps(T2))";
  private static final String INDOORS = "½ ((p2 − pe2) − (p1 − pe1)) (1/ps(T1) + 1/ps(T2))";
  private static final String ORDERS =
      "Mean over all orders in which temperature, outdoor air and what is added indoors can change;"
          + " the parts add to the whole. Bounds: every error as root of the sum of squares.";
  private static final Citation SHAPLEY =
      Citation.of(
          "Shapley, A value for n-person games",
          "1953",
          "the mean over all orders as a share that depends on none",
          How.MEMORY);

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

  HumidityChange humidity() {
    Pair pair = pair("humidity", "Humidity", AirState::humidity, Unit.RELATIVE_HUMIDITY);
    Optional<Figure> none = Optional.empty();
    boolean outdoors = compared.simultaneous();
    return new HumidityChange(
        pair.before(),
        pair.after(),
        pair.change(
            figureId("humidity_points"),
            "Change of relative humidity in " + place(),
            Unit.PERCENTAGE_POINT,
            "φ"),
        pair.share(
            figureId("humidity_relative"),
            "Change of relative humidity as a share of what it was in " + place(),
            "φ"),
        part("from_temperature", "temperature", HumiditySplit::fromTemperature, TEMPERATURE),
        part("from_moisture", "vapour", HumiditySplit::fromMoisture, MOISTURE),
        outdoors
            ? Optional.of(
                part("from_outdoors", "outdoor air", HumiditySplit::fromOutdoors, OUTDOORS))
            : none,
        outdoors
            ? Optional.of(
                part(
                    "from_indoors",
                    "moisture and air indoors",
                    HumiditySplit::fromIndoors,
                    INDOORS))
            : none,
        compared.judge(
            pair.difference(),
            pair.error(),
            String.format(
                Locale.ROOT, "plus or minus %.0f percentage points", pair.error() * 100)));
  }

  ExcessChange excess() {
    Pair pair = pair("excess", "Vapour pressure excess", AirState::excess, Unit.PASCAL);
    Pair content = pair("content", "Vapour excess", AirState::content, Unit.VAPOUR_CONTENT);
    return new ExcessChange(
        pair.before(),
        pair.after(),
        pair.change(
            figureId("excess_change"),
            "Change of the vapour pressure excess in " + place(),
            Unit.PASCAL,
            "Δp"),
        pair.share(
            figureId("excess_relative"),
            "Change of the vapour pressure excess as a share of what it was in " + place(),
            "Δp"),
        content.before(),
        content.after(),
        content.change(
            figureId("content_change"),
            "Change of the vapour excess in " + place(),
            Unit.VAPOUR_CONTENT,
            "Δv"),
        compared.judge(
            pair.difference(),
            pair.error(),
            String.format(Locale.ROOT, "plus or minus %.0f Pa", pair.error())));
  }

  private Pair pair(String id, String name, Function<AirState, Range> what, Unit unit) {
    return new Pair(
        state(id + "_before", name + " before", what.apply(before), unit),
        state(id + "_after", name + " after", what.apply(after), unit));
  }

  private Figure state(String suffix, String what, Range value, Unit unit) {
    AirState of = suffix.endsWith("before") ? before : after;
    return new Figure(
        figureId(suffix),
        what + " in " + place(),
        value,
        unit,
        Basis.CALCULATED,
        () ->
            new Working(
                "mean of " + of.spell().said(),
                List.of(),
                List.of(),
                Optional.of("See the humidity chapter of that visit.")));
  }

  private Figure part(
      String suffix, String of, ToDoubleFunction<HumiditySplit> part, String formula) {
    return new Figure(
        figureId(suffix),
        "Part of the " + of + " in the change of humidity in " + place(),
        HumiditySplit.bounded(part, before, after),
        Unit.PERCENTAGE_POINT,
        Basis.CALCULATED,
        () -> new Working(formula, inputs(), List.of(SHAPLEY), Optional.of(ORDERS)));
  }

  private List<Input> inputs() {
    return List.of(
        input("T1", "Temperature before", before.temperature(), Unit.CELSIUS),
        input("T2", "Temperature after", after.temperature(), Unit.CELSIUS),
        input("p1", "Vapour pressure before", Range.exactly(before.pressure()), Unit.PASCAL),
        input("p2", "Vapour pressure after", Range.exactly(after.pressure()), Unit.PASCAL),
        input("pe1", "Outdoor vapour pressure before", before.outdoorPressure(), Unit.PASCAL),
        input("pe2", "Outdoor vapour pressure after", after.outdoorPressure(), Unit.PASCAL));
  }

  private static Input input(String symbol, String name, Range value, Unit unit) {
    return Input.of(symbol, name, value, unit, Basis.CALCULATED);
  }

  private String figureId(String suffix) {
    return "change."
        + (compared.id().equals(AirChanges.HOME) ? "home" : "room." + compared.id())
        + "."
        + suffix;
  }

  private String place() {
    return "the " + compared.name();
  }
}
