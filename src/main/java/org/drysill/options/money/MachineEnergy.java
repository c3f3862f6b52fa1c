package org.drysill.options.money;

import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.options.effect.MachineAir;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.LatentHeat;
import org.drysill.reference.measures.MoistureEffect;
import org.drysill.reference.measures.OptionDefaults;

/**
 * The energy of machines that dry air or washing, and the heat that they leave in the home.
 *
 * <p>A machine dries the loads that there are, and its electricity follows from their number. How
 * much of their water the air is believed to hold ({@code MoistureShares.believed}) is another
 * matter: where readings tell of less water than the list, fewer kilograms are spared in the air,
 * but no load is washed less. The heat of evaporation goes by the water that is spared.
 */
record MachineEnergy(Assessment assessment, OptionDefaults defaults, HeatYear year) {
  private static final double JOULES_PER_KWH = 3.6e6;
  private static final double HOURS_PER_YEAR = 8760;
  private static final double HOURS_PER_WEEK = 168;
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

  /**
   * Energy for heating that is spared: by the heat of the water that no longer takes it from the
   * room to evaporate, whether it condenses in a machine there or leaves through the duct of one
   * that heats it itself; and by the heat of a machine that stands in the room.
   */
  Range heatSpared(Studied studied) {
    boolean stays = moisture(studied).flatMap(MoistureEffect::heatStays).orElse(false);
    boolean dries = moisture(studied).flatMap(MoistureEffect::kwhPerLoad).isPresent();
    return (stays || dries ? evaporation(studied) : ZERO)
        .plus(stays ? ofMachine(studied) : ZERO)
        .times(defaults.machineHeatUseful().range())
        .dividedBy(assessment.home().money().heatingEfficiency().value());
  }

  private Range evaporation(Studied studied) {
    double celsius = assessment.home().setpoint().likely();
    return heatedWater(studied).times(LatentHeat.vaporisationJKg(celsius) / JOULES_PER_KWH);
  }

  private Range ofMachine(Studied studied) {
    return drying(studied).plus(washing(studied).times(year.heatedHours() / HOURS_PER_YEAR));
  }

  /** Water kept from the air in the heated months [kg/a]. */
  private Range heatedWater(Studied studied) {
    return studied.water().times(SECONDS_PER_HOUR * year.heatedHours());
  }

  private static Optional<MoistureEffect> moisture(Studied studied) {
    return studied.candidate().measure().moisture();
  }

  /** Loads of washing in a year. */
  private Range loads(MoistureEffect moisture) {
    return assessment.moisture().items().stream()
        .filter(i -> moisture.sources().contains(i.kind()))
        .map(this::loads)
        .reduce(ZERO, Range::plus);
  }

  /** As many as are counted in a week; else, where only their water is told, by that. */
  private Range loads(Item item) {
    return item.loadsPerWeek()
        .map(n -> n.times(HOURS_PER_YEAR / HOURS_PER_WEEK))
        .orElseGet(
            () ->
                item.production()
                    .value()
                    .times(SECONDS_PER_HOUR * HOURS_PER_YEAR)
                    .dividedBy(defaults.kgPerLoad().range()));
  }
}
