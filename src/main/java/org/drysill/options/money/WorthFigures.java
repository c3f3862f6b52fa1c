package org.drysill.options.money;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.physics.energy.PresentValue;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** What one measure saves beside another that moves the same air, and what is left of that. */
final class WorthFigures {
  /** How first cost, running and replacements become one sum. */
  static final Citation GLOBAL_COST = Citation.of("EN 15459-1", "2017", "global cost", How.MEMORY);

  private final MoneyFacts money;
  private final Figures figures;

  WorthFigures(MoneyFacts money, Figures figures) {
    this.money = money;
    this.figures = figures;
  }

  /** {@code kept·p_heat − (W − W')·p_el − (u − u')} [currency/a]. */
  Figure saves(Figure kept, AirSide own, AirSide other) {
    Range power = own.electricity().value().minus(other.electricity().value());
    return figures.of(
        "saves",
        "what it saves in a year of running against the same air by " + other.measure().name(),
        kept.value()
            .times(money.heat().value())
            .minus(product(power, money.electricity().value()))
            .minus(own.upkeep().minus(other.upkeep())),
        Unit.MONEY_PER_YEAR,
        "kept·p_heat − (W − W')·p_el − (u − u')",
        List.of(
            Input.of("kept", kept),
            Input.of("W", own.electricity()),
            Input.of("W'", other.electricity()),
            Input.of("p_heat", money.heat()),
            Input.of("p_el", money.electricity()),
            Input.of("u", "upkeep", own.upkeep(), Unit.MONEY_PER_YEAR, Basis.ASSUMED),
            Input.of(
                "u'", "upkeep of the other", other.upkeep(), Unit.MONEY_PER_YEAR, Basis.ASSUMED)),
        List.of());
  }

  /** {@code saves − (CI·A − CI'·A')} [currency/a]. */
  Figure left(Figure saves, AirSide own, AirSide other) {
    Range more = own.payments(money).minus(other.payments(money));
    return figures.of(
        "left",
        "what is left of that in a year when both are paid for",
        saves.value().minus(more),
        Unit.MONEY_PER_YEAR,
        "saves − (CI·A − CI'·A')",
        List.of(
            Input.of("saves", saves),
            Input.of("CI", own.first()),
            Input.of("CI'", other.first()),
            Input.of("r", money.discountRate()),
            Input.of("τ", money.horizon())),
        List.of(GLOBAL_COST));
  }

  /** The same over the horizon, in money of today [currency]. */
  Figure overHorizon(Figure left) {
    return figures.of(
        "left_over_horizon",
        "the same over the horizon, in money of today",
        left.value()
            .times(
                PresentValue.annuityPresentValueFactor(
                    money.discountRate().likely(), money.horizon().likely())),
        Unit.MONEY,
        "left · f(τ)",
        List.of(
            Input.of("left", left),
            Input.of("r", money.discountRate()),
            Input.of("τ", money.horizon())),
        List.of(GLOBAL_COST));
  }

  /** A range of either sign by one that is above 0. */
  private static Range product(Range any, Range positive) {
    return new Range(
        any.low() * (any.low() < 0 ? positive.high() : positive.low()),
        any.likely() * positive.likely(),
        any.high() * (any.high() < 0 ? positive.low() : positive.high()));
  }
}
