package org.drysill.options;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.cautions.CautionAssessor;
import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.reference.measures.MeasureCatalogue;
import org.drysill.reference.measures.OptionDefaults;
import org.drysill.reference.prices.MoneyDefaults;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.reference.readings.ReadingAdvice;
import org.drysill.reference.surfaces.SurfaceTables;

/**
 * What is published about measures and money, and how surfaces are assessed again.
 *
 * @param catalogue the measures
 * @param defaults how effects are reckoned
 * @param money how money is counted where the survey does not say
 * @param prices energy prices and carbon factors by currency
 * @param glazing the kinds of glazing
 * @param cautions decides which cautions belong to a measure
 * @param surfaces assesses the surfaces again
 * @param tables how the surfaces are judged
 * @param advice what to measure next
 */
public record OptionsBasis(
    MeasureCatalogue catalogue,
    OptionDefaults defaults,
    MoneyDefaults money,
    List<PriceDefaults> prices,
    GlazingCatalogue glazing,
    CautionAssessor cautions,
    SurfacesAgain surfaces,
    SurfaceTables tables,
    ReadingAdvice advice) {
  /** Copies the list. */
  public OptionsBasis {
    prices = List.copyOf(prices);
  }

  /** Prices and factors of a currency. */
  public Optional<PriceDefaults> prices(String currency) {
    return prices.stream().filter(p -> p.currency().equals(currency)).findFirst();
  }
}
