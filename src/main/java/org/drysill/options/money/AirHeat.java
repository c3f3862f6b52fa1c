package org.drysill.options.money;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
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
    Range added = added(studied).plus(carrying(studied));
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

  /** The flows whose heat it is, with the sign that each has in the sum. */
  List<Flow> flows(Studied studied) {
    return Stream.of(
            new Flow("+ ΔQ", "outdoor air added", added(studied)),
            new Flow("+ qw", "air that carries water out", carrying(studied)),
            new Flow("− qk", "air by its recovery: heat that it keeps", kept(studied)),
            new Flow(
                "+ qg", "air by the recovery that goes: heat kept today", lostRecovery(studied)))
        .filter(f -> f.value().high() > 0)
        .toList();
  }

  /**
   * A flow that is warmed or whose heat is kept.
   *
   * @param term its sign and symbol in the sum
   * @param value how much [m³/s]
   */
  record Flow(String term, String name, Range value) {
    Input input() {
      return Input.of(term.substring(2), name, value, Unit.AIRFLOW, Basis.CALCULATED);
    }
  }

  private static Range added(Studied studied) {
    return studied.effect().addedAir().map(Figure::value).orElse(ZERO);
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
