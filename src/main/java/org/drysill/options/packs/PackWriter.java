package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.assess.surfaces.year.RoomYear;
import org.drysill.options.Benefits;
import org.drysill.options.MeasureMoney;
import org.drysill.options.MeasurePackage;
import org.drysill.options.MonthsAtRisk;
import org.drysill.options.effect.Figures;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.reference.measures.MeasureBenefits;

/**
 * Makes the records of the report from packages.
 *
 * @param assessment the home
 * @param candidates the measures
 * @param works the order of works
 * @param humidity humidity of a package in the coldest month [1], not a number where not known
 * @param atRisk how many places a package leaves at risk in each month
 * @param years the year of a package hour by hour
 * @param spreads how sure packages are
 */
record PackWriter(
    Assessment assessment,
    Candidates candidates,
    OrderOfWorks works,
    ToDoubleFunction<Bits> humidity,
    Function<Bits, MonthsAtRisk> atRisk,
    Function<Bits, RoomYear> years,
    Spreads spreads) {
  /** A package by a name, with the reasons for its place. */
  MeasurePackage of(String name, PackValue value, List<String> reasons) {
    PackFigures figures =
        new PackFigures(new Figures("package." + name), assessment.ventilation().wholeHome());
    List<Member> members = candidates.in(value);
    Bill bill = value.bill();
    return new MeasurePackage(
        name,
        steps(value),
        works.order().reaches(value),
        value.safe(),
        Math.round(100 * works.order().progress(value)),
        figures.lacks(value),
        value.mould(),
        value.wet(),
        atRisk.apply(value.members()),
        figures.humidity(humidity.applyAsDouble(value.members())),
        figures.money(
            "first_cost",
            "first cost",
            Unit.MONEY,
            bill.first(),
            of(members, MeasureMoney::firstCost)),
        figures.money(
            "annual_cost",
            "yearly cost over the horizon",
            Unit.MONEY_PER_YEAR,
            bill.annual(),
            of(members, MeasureMoney::annualCost)),
        new PackCost(assessment.home().money()).of(value, members),
        figures.money(
            "running_cost",
            "running cost in a year",
            Unit.MONEY_PER_YEAR,
            bill.running(),
            of(members, MeasureMoney::runningCost)),
        figures.heat(
            bill.heatKwh(),
            all(members, MeasureMoney::heatLost),
            all(members, MeasureMoney::heatSaved)),
        figures.energy(
            "electricity",
            "electricity in a year",
            bill.electricityKwh(),
            Unit.KWH_PER_YEAR,
            all(members, MeasureMoney::electricity)),
        figures.energy(
            "co2",
            "carbon dioxide of its energy in a year",
            bill.co2Kg(),
            Unit.KG_CO2_PER_YEAR,
            all(members, MeasureMoney::co2)),
        cautions(members),
        benefits(members),
        years.apply(value.members()),
        spreads.of(value),
        reasons);
  }

  private List<MeasurePackage.Step> steps(PackValue value) {
    List<MeasurePackage.Step> steps = new ArrayList<>();
    List<Member> done = List.of();
    for (PackValue after : works.of(value.members())) {
      List<Member> before = done;
      done = candidates.in(after);
      Member added = done.stream().filter(m -> !before.contains(m)).findFirst().orElseThrow();
      steps.add(
          new MeasurePackage.Step(
              added.id(), added.candidate().title(), after.lacks(), after.mould(), after.wet()));
    }
    return steps;
  }

  private static List<Figure> all(List<Member> members, Function<MeasureMoney, Figure> part) {
    return of(members, money -> Optional.of(part.apply(money)));
  }

  private static List<Figure> of(
      List<Member> members, Function<MeasureMoney, Optional<Figure>> part) {
    return members.stream().flatMap(m -> part.apply(m.entry().costed().money()).stream()).toList();
  }

  private static List<String> cautions(List<Member> members) {
    return members.stream()
        .flatMap(m -> m.entry().cautions().stream())
        .sorted(Comparator.comparingInt(c -> c.caution().order()))
        .map(ShownCaution::id)
        .distinct()
        .toList();
  }

  private static Benefits benefits(List<Member> members) {
    return new Benefits(
        benefits(members, MeasureBenefits::comfort),
        benefits(members, MeasureBenefits::health),
        benefits(members, MeasureBenefits::fabric));
  }

  private static List<String> benefits(
      List<Member> members, Function<MeasureBenefits, List<String>> kind) {
    return members.stream()
        .flatMap(m -> kind.apply(m.measure().benefits()).stream())
        .distinct()
        .toList();
  }
}
