package org.drysill.options.money;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
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

  /** Electricity that a machine takes. */
  Stream<EnergyPart> electricity(Studied studied) {
    return Stream.concat(drying(studied).stream(), washing(studied).stream());
  }

  /** Electricity of a machine that takes water from the air of the heated months. */
  private Optional<EnergyPart> drying(Studied studied) {
    return moisture(studied)
        .flatMap(m -> m.kwhPerKg(MachineAir.celsius(assessment.home())))
        .map(
            k ->
                new EnergyPart(
                    heatedWater(studied).times(k),
                    "m·k",
                    List.of(water(studied), count("k", "kWh for each kg", k))));
  }

  private Optional<EnergyPart> washing(Studied studied) {
    return moisture(studied)
        .flatMap(
            m ->
                m.kwhPerLoad()
                    .map(
                        k ->
                            new EnergyPart(
                                loads(m).times(k.range()),
                                "N·k",
                                List.of(
                                    count("N", "loads in a year", loads(m)),
                                    count("k", "kWh for each load", k.range())))));
  }

  /**
   * Energy for heating that is spared: by the heat of the water that no longer takes it from the
   * room to evaporate, whether it condenses in a machine there or leaves through the duct of one
   * that heats it itself; and by the heat of a machine that stands in the room.
   */
  Stream<EnergyPart> heatSpared(Studied studied) {
    boolean stays = moisture(studied).flatMap(MoistureEffect::heatStays).orElse(false);
    boolean dries = moisture(studied).flatMap(MoistureEffect::kwhPerLoad).isPresent();
    Stream<EnergyPart> parts = stays || dries ? Stream.of(evaporation(studied)) : Stream.empty();
    return stays ? Stream.concat(parts, ofMachine(studied)) : parts;
  }

  private EnergyPart evaporation(Studied studied) {
    double celsius = assessment.home().setpoint().likely();
    double perKg = LatentHeat.vaporisationJKg(celsius) / JOULES_PER_KWH;
    return useful(
        heatedWater(studied).times(perKg),
        "m·r",
        List.of(water(studied), count("r", "kWh to evaporate a kg", Range.exactly(perKg))));
  }

  private Stream<EnergyPart> ofMachine(Studied studied) {
    double heated = year.heatedHours() / HOURS_PER_YEAR;
    return Stream.concat(
        drying(studied).map(p -> useful(p.kwh(), p.formula(), p.inputs())).stream(),
        washing(studied)
            .map(
                p ->
                    useful(
                        p.kwh().times(heated),
                        p.formula() + "·h",
                        with(
                            p.inputs(),
                            Input.of(
                                "h",
                                "heated part of the year",
                                Range.exactly(heated),
                                Unit.PERCENT,
                                Basis.CALCULATED))))
            .stream());
  }

  /** The part of a heat that spares heating, in energy bought. */
  private EnergyPart useful(Range heat, String formula, List<Input> inputs) {
    Range share = defaults.machineHeatUseful().range();
    Figure efficiency = assessment.home().money().heatingEfficiency();
    return new EnergyPart(
        heat.times(share).dividedBy(efficiency.value()),
        formula + "·u / η",
        with(
            inputs,
            Input.of("u", "part that spares heating", share, Unit.PERCENT, Basis.ASSUMED),
            Input.of("η", efficiency)));
  }

  private static List<Input> with(List<Input> inputs, Input... more) {
    return Stream.concat(inputs.stream(), Stream.of(more)).toList();
  }

  private static Input count(String symbol, String name, Range value) {
    return Input.of(symbol, name, value, Unit.COUNT, Basis.ASSUMED);
  }

  private Input water(Studied studied) {
    return Input.of(
        "m",
        "water less in the air of the heated months",
        heatedWater(studied),
        Unit.KILOGRAM,
        Basis.CALCULATED);
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
