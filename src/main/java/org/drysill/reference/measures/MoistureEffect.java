package org.drysill.reference.measures;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * The water that a measure keeps out of the air or takes from it.
 *
 * @param sources the moisture sources that it touches, by their kind
 * @param shareAvoided share of their water that it keeps out of the air
 * @param removedKgPerDay water that it takes from the air [kg/d]
 * @param airM3PerKg outdoor air that comes in to carry each kg of water out, and is not counted as
 *     ventilation [m³/kg]
 * @param kwhPerKg electricity for each kg of water [kWh/kg]
 * @param kwhPerLoad electricity for each load of washing [kWh]
 * @param byTemperature what a machine does by the temperature of the air, coldest first, in place
 *     of {@code removedKgPerDay} and {@code kwhPerKg}
 * @param heatStays true where its electricity and the heat of the water stay in the home as heat
 * @param source where these come from
 */
public record MoistureEffect(
    @Key(
            about = "The moisture sources that it touches",
            example = "[cooking]",
            vocabulary = "moisture source")
        List<String> sources,
    @Key(about = "Share of their water kept out of the air, as ratio")
        Optional<Spread> shareAvoided,
    @Key(about = "Water taken from the air, in kg a day") Optional<Spread> removedKgPerDay,
    @Key(about = "Outdoor air that carries each kg of water out, in m3")
        Optional<Spread> airM3PerKg,
    @Key(about = "Electricity for each kg of water, in kWh") Optional<Spread> kwhPerKg,
    @Key(about = "Electricity for each load of washing, in kWh") Optional<Spread> kwhPerLoad,
    @Key(about = "What a machine does by the temperature of the air, coldest first")
        List<AtTemperature> byTemperature,
    @Key(about = "Its heat and that of the water stay in the home", example = "yes")
        Optional<Boolean> heatStays,
    @Key(about = "Where these come from") Citation source) {
  /** Copies the lists; refuses amounts that cannot be, and temperatures that do not rise. */
  public MoistureEffect {
    sources = List.copyOf(sources);
    byTemperature = List.copyOf(byTemperature);
    if (!Spread.isWithin(shareAvoided, 0, 1)) {
      throw new IllegalArgumentException("share_avoided from 0 to 1");
    }
    if (!Stream.of(removedKgPerDay, airM3PerKg, kwhPerKg, kwhPerLoad)
        .allMatch(Spread::isNotNegative)) {
      throw new IllegalArgumentException("water, air and electricity of 0 or more");
    }
    for (int i = 1; i < byTemperature.size(); i++) {
      if (byTemperature.get(i).celsius() <= byTemperature.get(i - 1).celsius()) {
        throw new IllegalArgumentException("by_temperature with the coldest first, each once");
      }
    }
  }

  /** Water that it takes from air of a temperature [kg/d]; empty where it takes none. */
  public Optional<Range> removedKgPerDay(double celsius) {
    return at(celsius, AtTemperature::removedKgPerDay).or(() -> removedKgPerDay.map(Spread::range));
  }

  /** Electricity for each kg of water in air of a temperature [kWh/kg]. */
  public Optional<Range> kwhPerKg(double celsius) {
    return at(celsius, AtTemperature::kwhPerKg).or(() -> kwhPerKg.map(Spread::range));
  }

  /** On a straight line between two temperatures; beyond the ends the value of the end. */
  private Optional<Range> at(double celsius, Function<AtTemperature, Spread> value) {
    Optional<AtTemperature> below = Optional.empty();
    for (AtTemperature point : byTemperature) {
      if (point.celsius() >= celsius) {
        return Optional.of(
            below.map(b -> between(b, point, celsius, value)).orElse(value.apply(point).range()));
      }
      below = Optional.of(point);
    }
    return below.map(value).map(Spread::range);
  }

  private static Range between(
      AtTemperature below,
      AtTemperature above,
      double celsius,
      Function<AtTemperature, Spread> value) {
    double share = (celsius - below.celsius()) / (above.celsius() - below.celsius());
    return value
        .apply(below)
        .range()
        .times(1 - share)
        .plus(value.apply(above).range().times(share));
  }
}
