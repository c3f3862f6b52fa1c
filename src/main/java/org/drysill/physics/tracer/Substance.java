package org.drysill.physics.tracer;

import org.drysill.physics.Bounds;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.fit.Prior;

/**
 * What was logged, which decides what a decay can say of the air. A series of one substance cannot
 * give the evidence of the other.
 */
public sealed interface Substance {
  /** What decays of this substance say of the air change, at a confidence. */
  AirChangeEvidence evidence(CombinedRate rate, double confidence);

  /**
   * What a decay tends to.
   *
   * @param before the excess just before the rise that the decay undoes
   * @param uncertainty standard uncertainty of that level
   */
  Prior level(double before, double uncertainty);

  /** True where the decay tends to the excess before the rise, which must then be known. */
  boolean fallsToLevelBefore();

  /** A gas that nothing in a room stores, such as CO₂: its decay tends to the outdoor air. */
  record Inert() implements Substance {
    @Override
    public AirChangeEvidence evidence(CombinedRate rate, double confidence) {
      return new AirChangeEvidence.FromTracer(
          rate.perHour(confidence), rate.decays(), rate.between());
    }

    @Override
    public Prior level(double before, double uncertainty) {
      return new Prior(0, uncertainty);
    }

    @Override
    public boolean fallsToLevelBefore() {
      return false;
    }
  }

  /**
   * Vapour, which fabric and furniture store: its decay tends to the excess before the event, for
   * production and stores go on, and runs at n/M.
   *
   * <p>That holds for its slow part alone. With fabric that takes vapour up at k air changes, the
   * balance of air and fabric
   *
   * <pre>
   * dv/dt = −n·v − k·(v − w),   (M − 1)·dw/dt = k·(v − w)
   * </pre>
   *
   * <p>has a fast rate above n + k and a slow one below n/(M − 1)·k/(n + k). A decay read from the
   * peak on shows the fast one and is no lower bound of n; hence the time to settle in the rules.
   *
   * @param capacitance M, effective moisture capacitance multiplier [1], at least 1
   */
  record Buffered(Range capacitance) implements Substance {
    /** Refuses stores that give more than they take. */
    public Buffered {
      Bounds.atLeast("effective capacitance multiplier", capacitance.low(), 1);
    }

    @Override
    public AirChangeEvidence evidence(CombinedRate rate, double confidence) {
      Range perHour = rate.perHour(confidence);
      return new AirChangeEvidence.FromVapour(
          perHour.low(), perHour.high() * capacitance.high(), rate.decays(), capacitance);
    }

    @Override
    public Prior level(double before, double uncertainty) {
      return new Prior(before, uncertainty);
    }

    @Override
    public boolean fallsToLevelBefore() {
      return true;
    }
  }
}
