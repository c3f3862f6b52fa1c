package org.drysill.assess.humidity;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.reference.readings.ClassMeaning;

/**
 * The vapour excess of indoor over outdoor air.
 *
 * @param id start of the ids of its figures
 * @param where the place, to follow "in"
 * @param indoor the air of the room
 * @param figures the figures of the room
 * @param outdoor the outdoor air that it is compared with
 */
record Excess(
    String id, String where, MeasuredAir indoor, AirFigures figures, OutdoorAirs.Found outdoor) {

  /** Error of the pressure excess [Pa]: independent errors as root of the sum of squares. */
  double pressureError() {
    return Math.hypot(indoor.vapourPressureError(), outdoor.pressureError());
  }

  /** Δp [Pa]. */
  Figure pressure() {
    return new Figure(
        id + ".vapour_pressure_excess",
        "Vapour pressure excess of " + where + " over outdoors",
        Range.around(pressureLikely(), pressureError()),
        Unit.PASCAL,
        basis(),
        () ->
            working(
                "Δp = pi − pe",
                Input.of("pi", figures.vapourPressure()),
                Input.of("pe", outdoor.air().vapourPressure())));
  }

  /** Δv [kg/m³], each side at its own temperature. */
  Figure content() {
    return new Figure(
        id + ".vapour_excess",
        "Vapour excess of " + where + " over outdoors",
        Range.around(contentLikely(), contentError()),
        Unit.VAPOUR_CONTENT,
        basis(),
        () ->
            working(
                "Δv = vi − ve",
                Input.of("vi", figures.vapourContent()),
                Input.of("ve", outdoor.air().vapourContent())));
  }

  /** The class that the excess would have as a monthly mean. */
  Optional<ClassIndication> humidityClass(List<ClassMeaning> meanings) {
    double outdoorCelsius = outdoor.air().temperature().likely();
    double error = pressureError();
    return HumidityClass.of(pressureLikely(), outdoorCelsius)
        .map(
            likely ->
                new ClassIndication(
                    number(pressureLikely() - error, outdoorCelsius),
                    likely.number(),
                    number(pressureLikely() + error, outdoorCelsius),
                    meanings.get(likely.number() - 1).meaning(),
                    meanings.get(likely.number() - 1).source()));
  }

  private static int number(double excess, double outdoorCelsius) {
    return HumidityClass.of(excess, outdoorCelsius).orElseThrow().number();
  }

  private double pressureLikely() {
    return indoor.vapourPressure().likely() - outdoor.air().vapourPressure().likely();
  }

  private double contentLikely() {
    return indoor.vapourContent().likely() - outdoor.air().vapourContent().likely();
  }

  private double contentError() {
    return VapourBalance.contentExcessKgM3(
        pressureError(), indoor.temperature().likely(), outdoor.air().temperature().likely());
  }

  private Basis basis() {
    return outdoor.air().simultaneous() ? Basis.CALCULATED : Basis.ASSUMED;
  }

  private Working working(String formula, Input inside, Input outside) {
    return new Working(
        formula,
        List.of(inside, outside),
        List.of(Sources.EXCESS, Sources.ERRORS),
        Optional.of(
            "Outdoor air: "
                + outdoor.air().said()
                + ". Bounds: the instruments' errors as root of the sum of squares."));
  }
}
