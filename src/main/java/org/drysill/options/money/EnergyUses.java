package org.drysill.options.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.reference.Spread;

/** The energy that measures take and save. */
record EnergyUses(Assessment assessment, OptionsBasis basis, HeatYear year, Recovered recovered) {
  private static final double HOURS_PER_YEAR = 8760;
  private static final Range ZERO = Range.exactly(0);
  private static final EnergyPart NONE = new EnergyPart(ZERO, "", List.of());

  EnergyUse of(Studied studied) {
    AirHeat heat = new AirHeat(year, recovered);
    Range air = heat.of(studied);
    MachineEnergy machine = new MachineEnergy(assessment, basis.defaults(), year);
    return new EnergyUse(
        some(Stream.of(air(heat, studied, "", air), warmth(studied))),
        some(
            Stream.concat(
                Stream.of(air(heat, studied, "−", air.times(-1)), fabric(studied)),
                machine.heatSpared(studied))),
        some(Stream.concat(fans(studied).stream(), machine.electricity(studied))));
  }

  /** Those that are anything. */
  private static List<EnergyPart> some(Stream<EnergyPart> parts) {
    return parts.filter(p -> p.kwh().high() > 0 || p.kwh().low() < 0).toList();
  }

  private EnergyPart air(AirHeat heat, Studied studied, String sign, Range kwh) {
    List<AirHeat.Flow> flows = heat.flows(studied);
    String sum = flows.stream().map(AirHeat.Flow::term).collect(Collectors.joining(" "));
    String flow = sum.startsWith("+ ") ? sum.substring(2) : sum;
    String formula =
        sign
            + HeatYear.OF_A_FLOW.replace(
                "·q·", flows.size() > 1 ? "·(" + flow + ")·" : "·" + flow + "·");
    return new EnergyPart(
        positive(kwh),
        kwh.low() < 0 && kwh.high() > 0 ? "max(0, " + formula + ")" : formula,
        year.inputs(flows.stream().map(AirHeat.Flow::input).toArray(Input[]::new)));
  }

  private EnergyPart warmth(Studied studied) {
    double area =
        studied.candidate().rooms().stream()
            .map(RoomFacts::floorArea)
            .mapToDouble(Figure::likely)
            .sum();
    Figure efficiency = assessment.home().money().heatingEfficiency();
    return studied
        .candidate()
        .measure()
        .warmth()
        .map(
            w ->
                new EnergyPart(
                    w.raisesBy()
                        .range()
                        .times(w.kwhPerKelvinM2().range())
                        .times(area)
                        .dividedBy(efficiency.value()),
                    "ΔT·w·A / η",
                    List.of(
                        assumed("ΔT", "warmer by", w.raisesBy().range(), Unit.KELVIN),
                        assumed(
                            "w", "kWh for each K and m²", w.kwhPerKelvinM2().range(), Unit.COUNT),
                        assumed("A", "floor area", Range.exactly(area), Unit.SQUARE_METRE),
                        Input.of("η", efficiency))))
        .orElse(NONE);
  }

  private EnergyPart fabric(Studied studied) {
    Range wattPerKelvin = new WarmedFabric(assessment, basis).lessLost(studied.candidate());
    return new EnergyPart(
        wattPerKelvin.times(year.perWattPerKelvin()),
        "H·D·24 h / η",
        year.inputs(assumed("H", "Σ A·(U − U')", wattPerKelvin, Unit.WATT_PER_KELVIN)));
  }

  private static Input assumed(String symbol, String name, Range value, Unit unit) {
    return Input.of(symbol, name, value, unit, Basis.ASSUMED);
  }

  /** Electricity of the new fan less that of the fans that go with it. */
  private Optional<EnergyPart> fans(Studied studied) {
    return studied.candidate().measure().power().map(Spread::range).map(p -> fans(studied, p));
  }

  private static EnergyPart fans(Studied studied, Range power) {
    Range share = share(studied);
    Range spared = spared(studied);
    boolean goes = spared.high() > 0;
    List<Input> inputs = new ArrayList<>();
    inputs.add(assumed("P", "usual power", power, Unit.WATT));
    inputs.add(assumed("s", "share of the day", share, Unit.PERCENT));
    if (goes) {
      inputs.add(
          Input.of("P'", "mean power of the fans that go", spared, Unit.WATT, Basis.CALCULATED));
    }
    return new EnergyPart(
        power.times(share).minus(spared).times(FanEnergy.electricityKwh(1, HOURS_PER_YEAR)),
        goes ? "(P·s − P')·8760 h" : "P·s·8760 h",
        inputs);
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
