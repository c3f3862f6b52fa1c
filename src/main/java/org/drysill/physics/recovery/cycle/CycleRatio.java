package org.drysill.physics.recovery.cycle;

import java.util.List;
import org.drysill.physics.TemperatureRatio;

/**
 * The temperature ratio of whole judged half-cycles.
 *
 * @param ratio mean over the cycles used, weighted by air [1]
 * @param scatterError standard error of that mean from the scatter between cycles [1]
 * @param lagCorrection what taking out the lag of the thermometer changed [1]
 * @param edgeError what a turn that is known to half a step only may change [1]
 * @param near mean temperature before the face [°C]
 * @param far mean temperature before the other face [°C]
 * @param judged mean temperature of judged air, lag taken out [°C]
 * @param timing how it turns
 * @param stepS median time from one reading to the next [s]
 * @param used whole cycles that count
 * @param settling cycles at the start that were left out, while the store settled
 * @param incomplete cycles that were left out because a part of them is missing or of odd length
 * @param balance judged air by the other half's air in a cycle [1]; NaN where nobody read the flow
 * @param folded the temperature over the cycle, from the start of the judged half on
 */
public record CycleRatio(
    double ratio,
    double scatterError,
    double lagCorrection,
    double edgeError,
    double near,
    double far,
    double judged,
    CycleTiming timing,
    double stepS,
    int used,
    int settling,
    int incomplete,
    double balance,
    List<FoldedPoint> folded)
    implements CycleOutcome {
  /** Copies the list. */
  public CycleRatio {
    folded = List.copyOf(folded);
  }

  /**
   * Uncertainty of the ratio: of the thermometers by the law of propagation (JCGM 100:2008, GUM),
   * whose offsets no number of cycles averages out, of the scatter between cycles, of the lag and
   * of the turns, independent of each other.
   *
   * <pre>u² = u(T)² + (k·s)² + (b·δ)² + e²</pre>
   *
   * <p>s standard error by scatter, δ correction for lag, e error by turns.
   *
   * @param uFaceK uncertainty of the temperature at the face [K]
   * @param uNearK uncertainty of the temperature before the face [K]
   * @param uFarK uncertainty of the temperature before the other face [K]
   * @param coverage k, how many standard errors the others stand for
   * @param lagShare b, share of its correction that the lag may be wrong by [1]
   */
  public double uncertainty(
      double uFaceK, double uNearK, double uFarK, double coverage, double lagShare) {
    double thermometers = TemperatureRatio.uncertainty(ratio, near - far, uFaceK, uNearK, uFarK);
    return Math.hypot(
        Math.hypot(thermometers, coverage * scatterError),
        Math.hypot(lagShare * lagCorrection, edgeError));
  }
}
