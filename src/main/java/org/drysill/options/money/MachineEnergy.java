package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.options.effect.MachineAir;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.LatentHeat;
import org.drysill.reference.measures.MoistureEffect;
import org.drysill.reference.measures.OptionDefaults;

/** The energy of machines that dry air or washing, and the heat that they leave in the home. */
record MachineEnergy(Assessment assessment, OptionDefaults defaults, HeatYear year) {
  private static final double JOULES_PER_KWH = 3.6e6;
  private static final double HOURS_PER_YEAR = 8760;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final Range ZERO = Range.exactly(0);

  /** Electricity that a machine takes [kWh/a]. */
  Range electricity(Studied studied) {
    return drying(studied).plus(washing(studied));
  }

  /** Electricity of a machine that takes water from the air of the heated months. */
  private Range drying(Studied studied) {
    return moisture(studied)
        .flatMap(m -> m.kwhPerKg(MachineAir.celsius(assessment.home())))
        .map(k -> heatedWater(studied).times(k))
        .orElse(ZERO);
  }

  private Range washing(Studied studied) {
    return moisture(studied)
        .flatMap(m -> m.kwhPerLoad().map(k -> loads(m).times(k.range())))
        .orElse(ZERO);
  }

  /** Energy for heating that the heat of a machine and of the water that it keeps back spares. */
  Range heatSpared(Studied studied) {
    if (!moisture(studied).flatMap(MoistureEffect::heatStays).orElse(false)) {
      return ZERO;
    }
    double perKg =
        LatentHeat.vaporisationJKg(assessment.home().setpoint().likely()) / JOULES_PER_KWH;
    return heatedWater(studied)
        .times(perKg)
        .plus(drying(studied))
        .plus(washing(studied).times(year.heatedHours() / HOURS_PER_YEAR))
        .times(defaults.machineHeatUseful().range())
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
        .dividedBy(defaults.kgPerLoad().range());
  }
}
