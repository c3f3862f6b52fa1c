package org.drysill.options.money;

import org.drysill.assess.Figure;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.reference.measures.MoistureEffect;

/** The energy that warms the air which a measure adds, after what exchangers keep. */
record AirHeat(HeatYear year, Recovered recovered) {
  private static final Range ZERO = Range.exactly(0);

  /**
   * Energy for the added air, less what its exchanger keeps, more what the exchangers kept that go;
   * negative where less is warmed.
   */
  Range of(Studied studied) {
    Range added =
        studied.effect().addedAir().map(Figure::value).orElse(ZERO).plus(carrying(studied));
    Range kept = kept(studied);
    Range lost = lostRecovery(studied);
    double low = added.low() - kept.low() + lost.low();
    double likely = added.likely() - kept.likely() + lost.likely();
    double high = added.high() - kept.high() + lost.high();
    return Signed.product(
        new Range(
            Math.min(likely, Math.min(low, high)), likely, Math.max(likely, Math.max(low, high))),
        year.perFlow());
  }

  /** Air that carries water out and is no ventilation: of an open window, a dryer [m³/s]. */
  private static Range carrying(Studied studied) {
    return studied
        .candidate()
        .measure()
        .moisture()
        .flatMap(MoistureEffect::airM3PerKg)
        .map(a -> studied.water().times(a.range()))
        .orElse(ZERO);
  }

  /** Flow whose heat the new unit keeps: exchanged flow times share recovered [m³/s]. */
  private Range kept(Studied studied) {
    Range share = studied.candidate().measure().air().map(recovered::by).orElse(ZERO);
    return studied.running().map(r -> r.flow().times(r.shareOfDay()).times(share)).orElse(ZERO);
  }

  /** Flow whose heat the units keep today that go [m³/s]. */
  private Range lostRecovery(Studied studied) {
    return studied.replaced().stream()
        .map(f -> FanCosts.moved(f).times(recovered.by(f)))
        .reduce(ZERO, Range::plus);
  }
}
