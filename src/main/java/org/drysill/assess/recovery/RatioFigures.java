package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.recovery.RecoveryRatio;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.recovery.RecoveryDefaults;

/**
 * The figures of one test, with their workings.
 *
 * @param id the id of the test
 * @param t its temperatures
 * @param defaults what is taken for granted
 */
record RatioFigures(String id, TestTemperatures t, RecoveryDefaults defaults) {
  private static final Citation RATIO =
      new Citation(
          "EN 13141-7 and EN 13141-8",
          Optional.empty(),
          Optional.of("temperature ratios"),
          How.MEMORY);
  private static final Citation ERROR =
      Citation.of("JCGM 100 (GUM)", "2008", "5.1.2, propagation of uncertainty", How.MEMORY);

  /** Indoors less outdoors [K]. */
  Figure difference() {
    return figure(
        "difference",
        "indoors less outdoors",
        indoor().minus(outdoor()),
        Unit.KELVIN,
        "Ti - Te",
        List.of(input("Ti", "room air", indoor()), input("Te", "outdoor air", outdoor())),
        Optional.empty());
  }

  /**
   * The ratio on the supply side, within 0 and 1: no exchanger gives more than the room has. A
   * single reading of an alternating unit may overstate.
   */
  Figure supply(Range supply, boolean single) {
    double likely = RecoveryRatio.supply(indoor().likely(), outdoor().likely(), supply.likely());
    double error =
        RecoveryRatio.uncertainty(
            likely,
            indoor().likely() - outdoor().likely(),
            halfWidth(supply),
            halfWidth(indoor()),
            halfWidth(outdoor()));
    double share = single ? defaults.singleReadingShare().likely() : 1;
    Range ratio =
        new Range(Math.max(0, (likely - error) * share), likely, Math.min(1, likely + error));
    return figure(
        "supply_ratio",
        "temperature ratio on the supply side",
        ratio,
        Unit.PERCENT,
        "η = (Tsup - Te) / (Ti - Te); u = √(us² + (η·ui)² + ((1 - η)·ue)²) / (Ti - Te)",
        List.of(
            input("Tsup", "supply air", supply),
            input("Ti", "room air", indoor()),
            input("Te", "outdoor air", outdoor())),
        single
            ? Optional.of(
                "The lower bound is multiplied by "
                    + Numbers.hundredth(share)
                    + ", as a reading at the start of supply overstates the mean.")
            : Optional.empty());
  }

  /** The ratio on the exhaust side. */
  Figure exhaust(Range exhaust) {
    Range extract = t.extract().orElseThrow();
    double likely = RecoveryRatio.exhaust(extract.likely(), outdoor().likely(), exhaust.likely());
    double error =
        RecoveryRatio.uncertainty(
            1 - likely,
            extract.likely() - outdoor().likely(),
            halfWidth(exhaust),
            halfWidth(extract),
            halfWidth(outdoor()));
    return figure(
        "exhaust_ratio",
        "temperature ratio on the exhaust side",
        Range.around(likely, error),
        Unit.PERCENT,
        "η = (Text - Texh) / (Text - Te)",
        List.of(
            input("Text", "air from the room", extract),
            input("Texh", "exhaust air", exhaust),
            input("Te", "outdoor air", outdoor())),
        Optional.of("Shown apart: never averaged with the ratio on the supply side."));
  }

  private Range indoor() {
    return t.indoor().orElseThrow();
  }

  private Range outdoor() {
    return t.outdoor().orElseThrow();
  }

  private static double halfWidth(Range range) {
    return (range.high() - range.low()) / 2;
  }

  private static Input input(String symbol, String name, Range value) {
    return Input.of(symbol, name, value, Unit.CELSIUS, Basis.MEASURED);
  }

  private Figure figure(
      String what,
      String name,
      Range value,
      Unit unit,
      String formula,
      List<Input> inputs,
      Optional<String> note) {
    return new Figure(
        id + "." + what,
        name,
        value,
        unit,
        Basis.MEASURED,
        () -> new Working(formula, inputs, List.of(RATIO, ERROR), note));
  }
}
