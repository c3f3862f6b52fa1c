package org.drysill.reference.prices;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * Energy prices and carbon factors of the place where a currency is paid.
 *
 * @param currency currency code
 * @param where what place and tariff the prices are those of
 * @param from the date from which the tariff held
 * @param energyPrices price by fuel, electricity among them [currency/kWh]
 * @param carbonDioxide carbon dioxide by fuel [kg/kWh]
 */
public record PriceDefaults(
    @Key(about = "Currency code", example = "GBP", id = true) String currency,
    @Key(about = "What place and tariff the prices are those of") String where,
    @Key(about = "The date from which the tariff held", example = "2026-01-01") LocalDate from,
    @Key(about = "Price by fuel, in currency per kWh") List<FuelFigure> energyPrices,
    @Key(about = "Carbon dioxide by fuel, in kg per kWh") List<FuelFigure> carbonDioxide) {
  /** Copies the lists. */
  public PriceDefaults {
    energyPrices = List.copyOf(energyPrices);
    carbonDioxide = List.copyOf(carbonDioxide);
  }

  /** All that are published, in the order of their files. */
  public static List<PriceDefaults> all() {
    return DataFiles.readAll("prices", PriceDefaults.class);
  }

  /** Those of a currency; empty where none are published. */
  public static Optional<PriceDefaults> of(String currency) {
    return all().stream().filter(p -> p.currency().equals(currency)).findFirst();
  }

  /** Price of a fuel by its word [currency/kWh]. */
  public Optional<FuelFigure> energyPrice(String fuel) {
    return find(energyPrices, fuel);
  }

  /** Price of electricity [currency/kWh]. */
  public Optional<FuelFigure> electricity() {
    return energyPrice("electricity");
  }

  /** Carbon dioxide of a fuel by its word [kg/kWh]. */
  public Optional<FuelFigure> carbonDioxide(String fuel) {
    return find(carbonDioxide, fuel);
  }

  static Optional<FuelFigure> find(List<FuelFigure> figures, String fuel) {
    return figures.stream().filter(f -> f.fuel().equals(fuel)).findFirst();
  }
}
