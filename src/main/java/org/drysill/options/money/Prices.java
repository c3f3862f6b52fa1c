package org.drysill.options.money;

import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.options.Price;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasurePrice;
import org.drysill.survey.OptionWishes;
import org.drysill.yaml.Quantity;

/** The price of a measure: the survey's own before a default of the same currency. */
record Prices(Home home, Areas areas) {

  Optional<Price> of(Candidate candidate) {
    Measure measure = candidate.measure();
    return quote(measure)
        .map(q -> price(candidate, true, q.range()))
        .or(
            () ->
                inCurrency(measure.price())
                    ? Optional.of(price(candidate, false, measure.price().range()))
                    : Optional.empty());
  }

  /** The price of one; empty where none is known in the survey's currency. */
  Optional<Range> each(Measure measure) {
    return quote(measure)
        .map(Quantity::range)
        .or(
            () ->
                inCurrency(measure.price())
                    ? Optional.of(measure.price().range())
                    : Optional.empty());
  }

  /** Upkeep in a year, where it is known in the survey's currency. */
  Optional<Range> upkeep(Measure measure) {
    return inCurrency(measure.price()) || measure.upkeep().range().high() == 0
        ? Optional.of(measure.upkeep().range())
        : Optional.empty();
  }

  private Optional<Quantity> quote(Measure measure) {
    return home.survey()
        .options()
        .map(OptionWishes::prices)
        .map((Map<String, Quantity> p) -> p.get(measure.name()));
  }

  private boolean inCurrency(MeasurePrice price) {
    return price.currency().equals(home.money().currency());
  }

  private Price price(Candidate candidate, boolean quoted, Range each) {
    MeasurePrice published = candidate.measure().price();
    return new Price(
        quoted,
        each,
        areas.count(candidate, published.unit()),
        published.unit().word(),
        home.money().currency(),
        quoted ? Optional.empty() : Optional.of(published.year()),
        quoted ? Optional.empty() : Optional.of(published.source()));
  }
}
