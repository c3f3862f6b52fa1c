package org.drysill.options;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.surfaces.year.RoomYear;

/**
 * Measures that are done together.
 *
 * @param name how the report calls it, such as {@code A}
 * @param steps its measures in the order of the works, with what each achieves
 * @param reaches true where it likely gives the air that is asked and leaves no month of mould
 * @param safe true where none of it needs a safety test first
 * @param closedPercent how much of what is lacking it closes [%]
 * @param lacks outdoor air that is still lacking
 * @param mouldMonths months at risk of mould left in a year, summed over walls and corners
 * @param wetGlassMonths months with wet glass left, summed over windows
 * @param atRisk how many places are at risk in each month
 * @param winterHumidity mean humidity in the coldest month of the rooms with cold places
 * @param firstCost first cost
 * @param annualCost yearly cost over the horizon
 * @param costParts the global cost by its parts; empty where a price is not known
 * @param runningCost yearly cost of energy and upkeep
 * @param heat energy for heat; negative where it saves
 * @param electricity electricity
 * @param co2 carbon dioxide of both
 * @param cautions the ids of the cautions of its measures
 * @param benefits what is not counted in money
 * @param year its year hour by hour, of each thing the worst place
 * @param spread how sure that is
 * @param reasons why it stands where it does
 */
public record MeasurePackage(
    String name,
    List<Step> steps,
    boolean reaches,
    boolean safe,
    long closedPercent,
    Figure lacks,
    int mouldMonths,
    int wetGlassMonths,
    MonthsAtRisk atRisk,
    Optional<Figure> winterHumidity,
    Figure firstCost,
    Figure annualCost,
    Optional<CostParts> costParts,
    Figure runningCost,
    Figure heat,
    Figure electricity,
    Figure co2,
    List<String> cautions,
    Benefits benefits,
    RoomYear year,
    PackageSpread spread,
    List<String> reasons) {
  /** Copies the lists. */
  public MeasurePackage {
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
    reasons = List.copyOf(reasons);
  }

  /** Its measures in words. */
  public List<String> titles() {
    return steps.stream().map(Step::title).toList();
  }

  /**
   * A step of the works.
   *
   * @param id the id of the measure at its place
   * @param title its title
   * @param lacksM3S air that is lacking after it and those before [m³/s]
   * @param mouldMonths months at risk of mould left then
   * @param wetGlassMonths months with wet glass left then
   */
  public record Step(
      String id, String title, double lacksM3S, int mouldMonths, int wetGlassMonths) {}
}
