package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.physics.energy.LatentHeat;
import org.drysill.reference.Spread;
import org.drysill.reference.measures.MoistureEffect;
import org.drysill.survey.Window;

/** The energy that measures take and save. */
record EnergyUses(Assessment assessment, OptionsBasis basis, HeatYear year, Recovered recovered) {
  private static final double JOULES_PER_KWH = 3.6e6;
  private static final double HOURS_PER_YEAR = 8760;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final Range ZERO = Range.exactly(0);

  EnergyUse of(Studied studied) {
    Range air = airHeat(studied);
    Range machine = machine(studied);
    return new EnergyUse(
        positive(air).plus(warmth(studied)),
        positive(air.times(-1)).plus(glass(studied)).plus(stays(studied)),
        fans(studied).plus(machine));
  }

  /**
   * Energy for the added air, less what its exchanger keeps, more what the exchangers kept that go;
   * negative where less is warmed.
   */
  private Range airHeat(Studied studied) {
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
    return moisture(studied)
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

  /** Electricity of the new fan less that of the fans that go with it. */
  private Range fans(Studied studied) {
    return studied
        .candidate()
        .measure()
        .power()
        .map(Spread::range)
        .map(p -> p.times(share(studied)).minus(spared(studied)))
        .map(p -> p.times(FanEnergy.electricityKwh(1, HOURS_PER_YEAR)))
        .orElse(ZERO);
  }

  private static Range share(Studied studied) {
    return studied.running().map(Studied.Running::shareOfDay).orElse(Range.exactly(1));
  }

  /** Power of the fans that go, averaged over time [W]; nothing for one whose power is unknown. */
  private static Range spared(Studied studied) {
    return studied.replaced().stream()
        .flatMap(f -> f.fan().power().map(p -> p.range().times(f.shareOfDay().value())).stream())
        .reduce(ZERO, Range::plus);
  }

  private Range machine(Studied studied) {
    return drying(studied).plus(washing(studied));
  }

  /** Electricity of a machine that takes water from the air of the heated months. */
  private Range drying(Studied studied) {
    return moisture(studied)
        .flatMap(MoistureEffect::kwhPerKg)
        .map(k -> heatedWater(studied).times(k.range()))
        .orElse(ZERO);
  }

  private Range washing(Studied studied) {
    return moisture(studied)
        .flatMap(m -> m.kwhPerLoad().map(k -> loads(m).times(k.range())))
        .orElse(ZERO);
  }

  /** Energy for heating that the heat of a machine and of the water that it keeps back spares. */
  private Range stays(Studied studied) {
    if (!moisture(studied).flatMap(MoistureEffect::heatStays).orElse(false)) {
      return ZERO;
    }
    double perKg =
        LatentHeat.vaporisationJKg(assessment.home().setpoint().likely()) / JOULES_PER_KWH;
    return heatedWater(studied)
        .times(perKg)
        .plus(drying(studied))
        .plus(washing(studied).times(year.heatedHours() / HOURS_PER_YEAR))
        .times(basis.defaults().machineHeatUseful().range())
        .dividedBy(assessment.home().money().heatingEfficiency().value());
  }

  /** Water kept from the air in the heated months [kg/a]. */
  private Range heatedWater(Studied studied) {
    return studied.water().times(SECONDS_PER_HOUR * year.heatedHours());
  }

  private static Optional<MoistureEffect> moisture(Studied studied) {
    return studied.candidate().measure().moisture();
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
