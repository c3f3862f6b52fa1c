package org.drysill.options;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * What a fan that is there costs to run in a year.
 *
 * @param fan the id of the survey
 * @param electricity its electricity [kWh/a]
 * @param heatLost energy that warms the air it brings in, after recovery [kWh/a]
 * @param heatRecovered energy that its heat recovery saves [kWh/a], for a unit that has one
 * @param netKept energy that its heat recovery saves less its electricity [kWh/a]
 * @param netSaved the same in money [currency/a]: against a fan that moved as much air without any
 *     electricity
 * @param likeMeasure the id of the measure that would fit such a unit anew, for one with recovery
 * @param worth such a unit beside the cheapest measure that moves the same air; empty for what
 *     recovers nothing and where a price is missing
 * @param cost electricity and heat in money [currency/a]
 */
public record FanRunningCost(
    String fan,
    Optional<Figure> electricity,
    Optional<Figure> heatLost,
    Optional<Figure> heatRecovered,
    Optional<Figure> netKept,
    Optional<Figure> netSaved,
    Optional<String> likeMeasure,
    Optional<RecoveryWorth> worth,
    Optional<Figure> cost) {}
