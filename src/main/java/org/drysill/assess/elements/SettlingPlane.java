package org.drysill.assess.elements;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.months.MonthNames;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Element;
import org.drysill.physics.layers.MonthWater;

/**
 * A plane at which water settles in a month, with the planes before and beyond it between which the
 * vapour pressure runs straight.
 */
record SettlingPlane(Element element, MonthWater month, int before, int plane, int beyond) {
  /** The plane that gains most water in a month. */
  static SettlingPlane wettest(Run run, MonthWater month) {
    int plane =
        IntStream.range(0, month.planes())
            .boxed()
            .max(Comparator.comparingDouble(month::gainedKgM2))
            .orElseThrow();
    int before = plane - 1;
    while (before > 0 && month.line().rateKgM2S(before) == 0) {
      before--;
    }
    int beyond = plane + 1;
    while (beyond < month.planes() - 1 && month.line().rateKgM2S(beyond) == 0) {
      beyond++;
    }
    return new SettlingPlane(run.element(), month, before, plane, beyond);
  }

  double gainedKgM2() {
    return month.gainedKgM2(plane);
  }

  Working working(WallSubject wall, int number) {
    return new Working(
        "ΔM = δ0 · [(p1 - pc) / sd1 - (pc - p2) / sd2] · 86400 · t; δ0 = 2e-10 kg/(m·s·Pa)",
        List.of(
            pressure("p1", "vapour pressure on the room side", before),
            pressure("pc", "vapour pressure where it settles, saturated", plane),
            pressure("p2", "vapour pressure on the outer side", beyond),
            airLayer("sd1", "still air up to there", before, plane),
            airLayer("sd2", "still air beyond", plane, beyond),
            Input.of(
                "t",
                "days of the month",
                Range.exactly(month.climate().days()),
                Unit.COUNT,
                Basis.PUBLISHED),
            Input.of(
                "Tc",
                "temperature where it settles",
                Range.exactly(
                    element.celsius(
                        plane, month.climate().indoorCelsius(), month.climate().outdoorCelsius())),
                Unit.CELSIUS,
                Basis.CALCULATED)),
        wall.sources(),
        Optional.of("The mean of " + MonthNames.of(number) + ", likely values."));
  }

  private Input pressure(String symbol, String name, int at) {
    return Input.of(
        symbol, name, Range.exactly(month.line().pressurePa(at)), Unit.PASCAL, Basis.CALCULATED);
  }

  private Input airLayer(String symbol, String name, int from, int to) {
    return Input.of(
        symbol,
        name,
        Range.exactly(element.airLayerM(to) - element.airLayerM(from)),
        Unit.METRE,
        Basis.CALCULATED);
  }
}
