package org.drysill.assess.recovery;

import static org.drysill.assess.recovery.cycle.TestFigures.celsius;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.recovery.cycle.TestFigures;
import org.drysill.physics.Range;
import org.drysill.physics.recovery.RecoveryRatio;
import org.drysill.reference.recovery.RecoveryDefaults;

/**
 * The figures of one test, with their workings.
 *
 * @param id the id of the test
 * @param t its temperatures
 * @param defaults what is taken for granted
 */
record RatioFigures(String id, TestTemperatures t, RecoveryDefaults defaults) {
  /** Indoors less outdoors [K]. */
  Figure difference() {
    return figures().difference(indoor(), outdoor());
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
    return figures()
        .of(
            "supply_ratio",
            "temperature ratio on the supply side",
            ratio,
            Unit.PERCENT,
            "η = (Tsup - Te) / (Ti - Te); u = √(us² + (η·ui)² + ((1 - η)·ue)²) / (Ti - Te)",
            List.of(
                celsius("Tsup", "supply air", supply),
                celsius("Ti", "room air", indoor()),
                celsius("Te", "outdoor air", outdoor())),
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
    return figures()
        .of(
            "exhaust_ratio",
            "temperature ratio on the exhaust side",
            Range.around(likely, error),
            Unit.PERCENT,
            "η = (Text - Texh) / (Text - Te)",
            List.of(
                celsius("Text", "air from the room", extract),
                celsius("Texh", "exhaust air", exhaust),
                celsius("Te", "outdoor air", outdoor())),
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

  private TestFigures figures() {
    return new TestFigures(id, List.of());
  }
}
