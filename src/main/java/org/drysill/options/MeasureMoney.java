package org.drysill.options;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * What a measure costs and saves. Money is in the survey's currency; it is empty where no price in
 * that currency is known, and {@code notTold} then says so.
 *
 * @param price the price that was used and where it comes from
 * @param firstCost what is paid at the start [currency]
 * @param heatLost energy to warm the added air, after recovery [kWh/a]
 * @param heatSaved energy that the measure saves [kWh/a]
 * @param electricity electricity that it uses; negative where it saves some [kWh/a]
 * @param energyCost yearly cost of those three [currency/a]; negative where they save money
 * @param upkeep yearly upkeep [currency/a]
 * @param runningCost energy and upkeep together [currency/a]
 * @param co2 yearly carbon dioxide of the energy [kg/a]; negative where it saves
 * @param globalCost first cost, running cost and replacement over the horizon, less what is left at
 *     its end, in money of today [currency]
 * @param annualCost the global cost as equal yearly payments over the horizon [currency/a]
 * @param againstNothing payback against doing nothing
 * @param againstSameAir payback against the cheapest measure that delivers the same air
 * @param notTold why there is no money figure, or which part of it is missing
 */
public record MeasureMoney(
    Optional<Price> price,
    Optional<Figure> firstCost,
    Figure heatLost,
    Figure heatSaved,
    Figure electricity,
    Optional<Figure> energyCost,
    Optional<Figure> upkeep,
    Optional<Figure> runningCost,
    Figure co2,
    Optional<Figure> globalCost,
    Optional<Figure> annualCost,
    Payback againstNothing,
    Optional<Payback> againstSameAir,
    Optional<String> notTold) {}
