package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.OptionsBasis;
import org.drysill.physics.Range;
import org.drysill.reference.Spread;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.AirMove;

/** Which share of its heat exchanged air keeps: as measured where there is a test in this home. */
record Recovered(Assessment assessment, OptionsBasis basis) {

  /** Of a fan that is there: measured, else declared and taken down for use, else nothing [1]. */
  Range by(FanFlow fan) {
    return within01(
        assessment
            .recovery()
            .unit(fan.fan().id())
            .flatMap(RecoveryUnit::measured)
            .map(Figure::value)
            .or(
                () ->
                    fan.fan()
                        .declaredHeatRecovery()
                        .map(d -> d.range().times(basis.defaults().recoveryInUse().range())))
            .orElse(Range.exactly(0)));
  }

  /**
   * Of a new unit: as measured at a unit of the same kind in this home, else as makers declare,
   * taken down for use [1].
   */
  Range by(AirEffect air) {
    return air.moves() == AirMove.EXCHANGE
        ? within01(measured(air).orElseGet(() -> declared(air)))
        : Range.exactly(0);
  }

  private Optional<Range> measured(AirEffect air) {
    return assessment.recovery().units().stream()
        .filter(u -> air.fan().filter(u.kind().word()::equals).isPresent())
        .flatMap(u -> u.measured().stream())
        .map(Figure::value)
        .findFirst();
  }

  private static Range declared(AirEffect air) {
    Range inUse = air.inUse().map(Spread::range).orElse(Range.exactly(1));
    return air.declaredRecovery().map(d -> d.range().times(inUse)).orElse(Range.exactly(0));
  }

  private static Range within01(Range share) {
    return new Range(clip(share.low()), clip(share.likely()), clip(share.high()));
  }

  private static double clip(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
