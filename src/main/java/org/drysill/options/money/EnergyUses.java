package org.drysill.options.money;

import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.reference.Spread;
import org.drysill.survey.Window;

/** The energy that measures take and save. */
record EnergyUses(Assessment assessment, OptionsBasis basis, HeatYear year, Recovered recovered) {
  private static final double HOURS_PER_YEAR = 8760;
  private static final Range ZERO = Range.exactly(0);

  EnergyUse of(Studied studied) {
    Range air = new AirHeat(year, recovered).of(studied);
    MachineEnergy machine = new MachineEnergy(assessment, basis.defaults(), year);
    return new EnergyUse(
        positive(air).plus(warmth(studied)),
        positive(air.times(-1)).plus(glass(studied)).plus(machine.heatSpared(studied)),
        fans(studied).plus(machine.electricity(studied)));
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
                    .map(
                        w ->
                            positive(before(w, after).minus(after))
                                .times(Areas.of(basis.defaults()).of(w)))
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

  private static Range positive(Range range) {
    return new Range(
        Math.max(0, range.low()), Math.max(0, range.likely()), Math.max(0, range.high()));
  }
}
