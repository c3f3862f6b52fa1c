package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.reference.Spread;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MoistureEffect;
import org.drysill.survey.Window;

/** The energy that measures take and save. */
record EnergyUses(Assessment assessment, OptionsBasis basis, HeatYear year) {
  private static final double HOURS_PER_YEAR = 8760;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final Range ZERO = Range.exactly(0);

  EnergyUse of(Studied studied) {
    Range air = airHeat(studied);
    Range warmth = warmth(studied);
    return new EnergyUse(
        positive(air).plus(warmth), positive(air.times(-1)).plus(glass(studied)), power(studied));
  }

  /** Energy for the added air less what an exchanger keeps; negative where less air is warmed. */
  private Range airHeat(Studied studied) {
    Range added = studied.effect().addedAir().map(Figure::value).orElse(ZERO);
    Range kept = kept(studied);
    double low = added.low() - kept.low();
    double likely = added.likely() - kept.likely();
    double high = added.high() - kept.high();
    Range net =
        new Range(
            Math.min(likely, Math.min(low, high)), likely, Math.max(likely, Math.max(low, high)));
    return Signed.product(net, year.perFlow());
  }

  /** Flow whose heat is kept: exchanged flow times share recovered [m³/s]. */
  private static Range kept(Studied studied) {
    Optional<AirEffect> air =
        studied.candidate().measure().air().filter(a -> a.moves() == AirMove.EXCHANGE);
    Range share =
        air.flatMap(AirEffect::declaredRecovery)
            .map(Spread::range)
            .map(
                d ->
                    d.times(
                        air.flatMap(AirEffect::inUse).map(Spread::range).orElse(Range.exactly(1))))
            .orElse(ZERO);
    return studied.running().map(r -> r.flow().times(r.shareOfDay()).times(share)).orElse(ZERO);
  }

  private Range warmth(Studied studied) {
    double area =
        studied.candidate().rooms().stream()
            .map(RoomFacts::floorArea)
            .mapToDouble(Figure::likely)
            .sum();
    return studied
        .candidate()
        .measure()
        .warmth()
        .map(w -> w.raisesBy().range().times(w.kwhPerKelvinM2().range()).times(area))
        .map(h -> h.dividedBy(assessment.home().money().heatingEfficiency().value()))
        .orElse(ZERO);
  }

  private Range glass(Studied studied) {
    return studied
        .candidate()
        .measure()
        .surface()
        .flatMap(s -> s.uValueAfter().map(Spread::range))
        .map(
            after ->
                studied.candidate().sites().stream()
                    .flatMap(s -> s.window().stream())
                    .map(w -> positive(before(w, after).minus(after)).times(Areas.of(w)))
                    .reduce(ZERO, Range::plus))
        .map(wattPerKelvin -> wattPerKelvin.times(year.perWattPerKelvin()))
        .orElse(ZERO);
  }

  /** Transmittance of a window today; that after the measure where it is not known. */
  private Range before(Window window, Range after) {
    return window
        .uValue()
        .map(q -> q.range())
        .or(() -> window.glazing().flatMap(g -> basis.glazing().find(g)).map(g -> g.ug().range()))
        .orElse(after);
  }

  private Range power(Studied studied) {
    Measure measure = studied.candidate().measure();
    Range fan =
        measure
            .power()
            .map(Spread::range)
            .flatMap(p -> studied.running().map(r -> p.times(r.shareOfDay())))
            .or(() -> measure.power().map(Spread::range))
            .map(p -> p.times(FanEnergy.electricityKwh(1, HOURS_PER_YEAR)))
            .orElse(ZERO);
    return fan.plus(measure.moisture().map(m -> machine(m, studied.water())).orElse(ZERO));
  }

  private Range machine(MoistureEffect moisture, Range water) {
    Range drying =
        moisture
            .kwhPerKg()
            .map(k -> water.times(k.range()).times(SECONDS_PER_HOUR * year.heatedHours()))
            .orElse(ZERO);
    return drying.plus(
        moisture.kwhPerLoad().map(k -> loads(moisture).times(k.range())).orElse(ZERO));
  }

  /** Loads of washing in a year, from the water that they give off. */
  private Range loads(MoistureEffect moisture) {
    return assessment.moisture().items().stream()
        .filter(i -> moisture.sources().contains(i.kind()))
        .map(i -> i.production().value())
        .reduce(ZERO, Range::plus)
        .times(SECONDS_PER_HOUR * HOURS_PER_YEAR)
        .dividedBy(basis.defaults().kgPerLoad().range());
  }

  private static Range positive(Range range) {
    return new Range(
        Math.max(0, range.low()), Math.max(0, range.likely()), Math.max(0, range.high()));
  }
}
