package org.drysill.reference.prices;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * How money is counted where the survey does not say.
 *
 * @param currency the currency of the default prices of measures
 * @param fuel the fuel of the heating where the survey names none, by its word
 * @param discountRate real discount rate, as ratio
 * @param horizon over how many years money is counted [a]
 * @param heatingEfficiency useful heat per energy in, by fuel, as ratio
 */
public record MoneyDefaults(
    @Key(about = "Currency of the default prices of measures", example = "GBP") String currency,
    @Key(about = "The heating's fuel where none is named", example = "mains gas") String fuel,
    @Key(about = "Real discount rate, as ratio") SourcedFigure discountRate,
    @Key(about = "Over how many years money is counted") SourcedFigure horizon,
    @Key(about = "Useful heat per energy in, by fuel, as ratio")
        List<FuelFigure> heatingEfficiency) {
  /** Copies the list. */
  public MoneyDefaults {
    heatingEfficiency = List.copyOf(heatingEfficiency);
  }

  /** The published defaults. */
  public static MoneyDefaults read() {
    return DataFiles.read("defaults/money.yaml", MoneyDefaults.class);
  }

  /** Efficiency of heating with a fuel by its word, as ratio. */
  public Optional<FuelFigure> heatingEfficiency(String fuel) {
    return PriceDefaults.find(heatingEfficiency, fuel);
  }
}
