package org.drysill.assess.ventilation.ducts;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.flow.DuctSystem;
import org.drysill.physics.flow.RoundDuct;
import org.drysill.reference.Citation;

/**
 * A duct of which enough was seen to reckon with it.
 *
 * @param diameter inner diameter, above 0 [m]
 * @param length length [m]
 * @param roughness roughness [m]
 * @param slackness how many times the friction of a taut duct it loses [1]
 * @param bends loss coefficients of its bends together [1]
 * @param ends loss coefficients of its ends and of what stands in it together [1]
 * @param unseen what was not seen, and is reckoned with from none to the worst
 * @param sources where the losses come from
 */
record KnownDuct(
    Range diameter,
    Range length,
    Range roughness,
    Range slackness,
    Range bends,
    Range ends,
    List<String> unseen,
    List<Citation> sources) {
  /** {@link RoundDuct} knows no rougher one. */
  private static final double ROUGHEST = 0.05;

  /** With every loss at its highest. */
  DuctSystem tightest() {
    return system(
        diameter.low(),
        length.high(),
        roughness.high(),
        slackness.high(),
        bends.high(),
        ends.high());
  }

  DuctSystem likely() {
    return system(
        diameter.likely(),
        length.likely(),
        roughness.likely(),
        slackness.likely(),
        bends.likely(),
        ends.likely());
  }

  /** With every loss at its lowest. */
  DuctSystem freest() {
    return system(
        diameter.high(), length.low(), roughness.low(), slackness.low(), bends.low(), ends.low());
  }

  private static DuctSystem system(
      double diameter,
      double length,
      double roughness,
      double slackness,
      double bends,
      double ends) {
    RoundDuct duct = new RoundDuct(diameter, Math.min(roughness, ROUGHEST * diameter));
    return new DuctSystem(duct, length, slackness, bends, ends);
  }

  List<Input> inputs() {
    return List.of(
        Input.of("D", "inner diameter", diameter, Unit.METRE, Basis.MEASURED),
        Input.of("L", "length", length, Unit.METRE, Basis.MEASURED),
        Input.of("ε", "roughness", roughness, Unit.METRE, Basis.PUBLISHED),
        Input.of(
            "m",
            "friction in times of that of a taut duct",
            slackness,
            Unit.RATIO,
            Basis.PUBLISHED),
        Input.of(
            "K_bends",
            "loss coefficients of the bends, together",
            bends,
            Unit.RATIO,
            Basis.ASSUMED),
        Input.of(
            "K_ends",
            "loss coefficients of the ends and of what stands in the duct, together",
            ends,
            Unit.RATIO,
            Basis.ASSUMED));
  }
}
