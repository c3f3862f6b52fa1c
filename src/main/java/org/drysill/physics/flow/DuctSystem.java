package org.drysill.physics.flow;

import java.util.List;
import org.drysill.physics.Bounds;
import org.drysill.physics.flow.RoundDuct.Air;

/**
 * A duct with its bends and its ends, and the flow at which it takes up a pressure.
 *
 * <pre>
 * Δp(q) = m·L·(f/D)·(ρ/2)·v² + (ΣK_bends + ΣK_ends)·(ρ/2)·v²
 * p_fan(q) = Δp(q)
 * </pre>
 *
 * <p>Friction by {@link RoundDuct}; m is how many times more a slack flexible duct loses than a
 * taut one [1], 4 to 10 by Abushakra, Walker and Sherman (seen in its abstract). The working point
 * is found by halving: the loss never falls with the flow, the pressure of a fan never rises.
 *
 * @param duct the straight duct
 * @param lengthM L [m]
 * @param slackness m, at least 1
 * @param bends ΣK of its bends [1]
 * @param ends ΣK of what covers its ends and stands in it [1]
 */
public record DuctSystem(
    RoundDuct duct, double lengthM, double slackness, double bends, double ends) {
  /** Halvings after which a flow is known to the last digit of a double. */
  private static final int HALVINGS = 60;

  /** Refuses what no duct has. */
  public DuctSystem {
    Bounds.atLeast("length [m]", lengthM, 0);
    Bounds.atLeast("slackness", slackness, 1);
    Bounds.atLeast("loss coefficient of the bends", bends, 0);
    Bounds.atLeast("loss coefficient of the ends", ends, 0);
  }

  /** Loss by friction [Pa]. */
  public double frictionPa(double flowM3S, Air air) {
    return slackness * lengthM * duct.frictionPaPerM(flowM3S, air);
  }

  /** Loss in the bends [Pa]. */
  public double bendsPa(double flowM3S, Air air) {
    return duct.fittingPa(bends, flowM3S, air);
  }

  /** Loss at the ends [Pa]. */
  public double endsPa(double flowM3S, Air air) {
    return duct.fittingPa(ends, flowM3S, air);
  }

  /** All of it, Δp [Pa]. */
  public double lossPa(double flowM3S, Air air) {
    return frictionPa(flowM3S, air) + bendsPa(flowM3S, air) + endsPa(flowM3S, air);
  }

  /** The flow of a fan that blows through it [m³/s], at most the last of its curve. */
  public double flowM3S(FanCurve fan, Air air) {
    double most = fan.mostM3S();
    if (lossPa(most, air) <= fan.pressurePa(most)) {
      return most;
    }
    double low = 0;
    double high = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (lossPa(middle, air) <= fan.pressurePa(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * The flow that a pressure difference [Pa] drives through it [m³/s].
   *
   * @param mostM3S no more than this flow
   */
  public double flowM3S(double pressurePa, double mostM3S, Air air) {
    return flowM3S(
        new FanCurve(
            List.of(new FanCurve.Point(0, pressurePa), new FanCurve.Point(mostM3S, pressurePa))),
        air);
  }
}
