package org.drysill.assess.moisture;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.assess.moisture.MoistureResult.Balance;
import org.drysill.physics.Range;
import org.drysill.reference.readings.BalanceRules;

/**
 * The comparison of the list of sources with what the readings imply.
 *
 * @param balance how they compare
 * @param implied what the readings imply; empty where they cannot tell
 * @param finding the same as a finding
 */
record BalanceFinding(Balance balance, Optional<Figure> implied, Finding finding) {
  private static final String LOGGERS =
      "Leave loggers of temperature and humidity indoors and outdoors for at least 1 week in winter,"
          + " and measure the flow of each fan.";

  static BalanceFinding of(
      Figure itemised, HumidityResult humidity, Figure provided, BalanceRules rules) {
    Optional<String> silent = silent(humidity.home(), provided.value(), rules);
    if (silent.isPresent()) {
      return make(Balance.UNKNOWN, itemised, Optional.empty(), silent.get(), rules);
    }
    Figure implied = ImpliedProduction.of(humidity.home().orElseThrow(), provided);
    Balance balance = compare(itemised.value(), implied.value());
    return make(balance, itemised, Optional.of(implied), because(balance), rules);
  }

  /** Why the readings cannot tell, where they cannot. */
  private static Optional<String> silent(
      Optional<HomeAir> air, Range provided, BalanceRules rules) {
    if (air.isEmpty()) {
      return Optional.of("No humidity was read in a heated room.");
    }
    if (!air.get().simultaneous()) {
      return Optional.of(
          "Temperature and humidity were not both read outdoors near in time to the rooms, and the"
              + " mean of a month says nothing of one day.");
    }
    if (air.get().excess().likely() < rules.leastExcess()) {
      return Optional.of(
          "The air indoors holds so little more vapour than outdoors that the hygrometer's error"
              + " decides.");
    }
    return provided.high() > 0
        ? Optional.empty()
        : Optional.of("No air flow through the home is known.");
  }

  private static Balance compare(Range itemised, Range implied) {
    if (implied.low() > itemised.high()) {
      return Balance.MORE_THAN_ITEMISED;
    }
    return implied.high() < itemised.low() ? Balance.LESS_THAN_ITEMISED : Balance.AGREE;
  }

  /** What it means; {@code balance} is one that readings can tell. */
  private static String because(Balance balance) {
    if (balance == Balance.AGREE) {
      return "Within their ranges the list of sources and the readings agree. Agreement of wide"
          + " ranges proves neither.";
    }
    return balance == Balance.MORE_THAN_ITEMISED
        ? "The readings imply more water than the list explains: a source is missing from the list"
            + " (a leak, damp ground, drying clothes), or the home gets less air than believed, or"
            + " the rooms were read just after cooking or washing."
        : "The readings imply less water than the list says: the home gets more air than believed,"
            + " the sources are used less, or walls and furniture were taking up vapour.";
  }

  private static BalanceFinding make(
      Balance balance,
      Figure itemised,
      Optional<Figure> implied,
      String because,
      BalanceRules rules) {
    Verdict verdict =
        switch (balance) {
          case AGREE, LESS_THAN_ITEMISED -> Verdict.MEETS;
          case MORE_THAN_ITEMISED -> Verdict.SHORT;
          case UNKNOWN -> Verdict.UNKNOWN;
        };
    return new BalanceFinding(
        balance,
        implied,
        new Finding(
            "moisture.balance",
            "List of moisture sources against the readings",
            Optional.empty(),
            verdict,
            Direction.AGREES,
            Optional.of(itemised),
            implied,
            because,
            balance == Balance.AGREE ? Optional.empty() : Optional.of(LOGGERS),
            List.of(rules.source())));
  }
}
