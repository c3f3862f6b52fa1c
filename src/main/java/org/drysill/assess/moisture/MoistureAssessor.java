package org.drysill.assess.moisture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.physics.Range;
import org.drysill.reference.moisture.DailyTotals;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.readings.BalanceRules;

/** Sets the water that the sources of a home give off against what its readings imply. */
public final class MoistureAssessor {
  private MoistureAssessor() {}

  /**
   * Assesses a home.
   *
   * @param home the home
   * @param table the moisture table
   * @param provided air that the home gets, averaged over the day [m³/s]
   * @param humidity what the readings say
   * @param rules when readings can tell
   */
  public static MoistureResult assess(
      Home home,
      MoistureSources table,
      Figure provided,
      HumidityResult humidity,
      BalanceRules rules) {
    People people = new People(home, table.people());
    Sourcing sourcing = new Sourcing(home, table, people.live());
    List<Item> items = new ArrayList<>();
    items.add(people.item());
    items.addAll(sourcing.items());
    List<Assumption> assumptions = new ArrayList<>(people.assumptions());
    assumptions.addAll(sourcing.assumptions());
    Figure itemised = sum(items);
    BalanceFinding compared = BalanceFinding.of(itemised, humidity, provided, rules);
    return new MoistureResult(
        items,
        itemised,
        compared.implied(),
        compared.balance(),
        compared.finding(),
        checks(home, table),
        assumptions);
  }

  private static Figure sum(List<Item> items) {
    Range total =
        items.stream().map(item -> item.production().value()).reduce(Range.exactly(0), Range::plus);
    return new Figure(
        "moisture.itemised",
        "Water given off by people and sources",
        total,
        Unit.MASS_RATE,
        weakest(items),
        () ->
            new Working(
                "G = Σ G(source)",
                items.stream().map(i -> Input.of("G(" + i.label() + ")", i.production())).toList(),
                List.of(),
                Optional.of("Bounds: all sources at their lowest, or all at their highest.")));
  }

  private static Basis weakest(List<Item> items) {
    return items.stream()
        .map(item -> item.production().basis())
        .max(Enum::compareTo)
        .orElse(Basis.ASSUMED);
  }

  /** Totals of the row of the household's size; of the last row for a larger household. */
  private static List<Figure> checks(Home home, MoistureSources table) {
    int people = Math.max(1, (int) Math.round(home.occupants().likely()));
    return table.dailyTotals().stream().map(totals -> check(totals, people)).toList();
  }

  private static Figure check(DailyTotals totals, int people) {
    int row = Math.min(people, totals.perDay().size());
    return new Figure(
        "moisture.published_total." + totals.occupancy(),
        "Published total of a "
            + totals.occupancy()
            + " household of "
            + row
            + (people > row ? " or more" : ""),
        Rates.perDay(totals.perDay().get(row - 1).range()),
        Unit.MASS_RATE,
        Basis.PUBLISHED,
        () -> new Working("as printed", List.of(), List.of(totals.source()), Optional.empty()));
  }
}
