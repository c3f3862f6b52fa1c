package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.assess.surfaces.year.RoomYear;
import org.drysill.options.Benefits;
import org.drysill.options.MeasureMoney;
import org.drysill.options.MeasurePackage;
import org.drysill.options.MonthsAtRisk;
import org.drysill.options.effect.Figures;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.physics.Range;
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
  private static final String SUM = "Σ of its measures";
  private static final String SUM_OF_AIR = "Σ of its measures + (ΔQ − Σ ΔQi)·price of air";

  /** A package by a name, with the reasons for its place. */
  MeasurePackage of(String name, PackValue value, List<String> reasons) {
    Figures figures = new Figures("package." + name);
    List<Member> members = candidates.in(value);
    Bill bill = value.bill();
    return new MeasurePackage(
        name,
        steps(value),
        works.order().reaches(value),
        value.safe(),
        Math.round(100 * works.order().progress(value)),
        lacks(figures, value),
        value.mould(),
        value.wet(),
        atRisk.apply(value.members()),
        humidity(figures, value),
        money(figures, "first_cost", "first cost", bill.first(), members, MeasureMoney::firstCost),
        money(
            figures,
            "annual_cost",
            "yearly cost over the horizon",
            bill.annual(),
            members,
            MeasureMoney::annualCost),
        new PackCost(assessment.home().money()).of(value, members),
        money(
            figures,
            "running_cost",
            "running cost in a year",
            bill.running(),
            members,
            MeasureMoney::runningCost),
        energy(figures, "heat", "energy for heat in a year", bill.heatKwh(), Unit.KWH_PER_YEAR),
        energy(
            figures,
            "electricity",
            "electricity in a year",
            bill.electricityKwh(),
            Unit.KWH_PER_YEAR),
        energy(
            figures,
            "co2",
            "carbon dioxide of its energy in a year",
            bill.co2Kg(),
            Unit.KG_CO2_PER_YEAR),
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

  /** Air that is still lacking. */
  private Figure lacks(Figures figures, PackValue value) {
    return figures.of(
        "lacks",
        "air that is still lacking: outdoor air of the home, and extract of wet rooms",
        Range.exactly(value.lacks()),
        Unit.AIRFLOW,
        "max(0, asked − C(S', E', I')), C = min(S, E) + √((S − E)² + I²)",
        asked(),
        List.of());
  }

  private List<Input> asked() {
    return Stream.concat(
            assessment.ventilation().wholeHome().required().map(f -> Input.of("asked", f)).stream(),
            Stream.of(
                Input.of("S", assessment.ventilation().provided().supply()),
                Input.of("E", assessment.ventilation().provided().extract()),
                Input.of("I", assessment.ventilation().provided().infiltration())))
        .toList();
  }

  private Optional<Figure> humidity(Figures figures, PackValue value) {
    double found = humidity.applyAsDouble(value.members());
    return Double.isNaN(found)
        ? Optional.empty()
        : Optional.of(
            figures.of(
                "winter_humidity",
                "mean humidity of the rooms with cold places in the coldest month",
                Range.exactly(found),
                Unit.PERCENT,
                "Σ V·(φ0 + Δφ·v'/v) / Σ V",
                List.of(),
                List.of()));
  }

  /** Ends are those of the measures, moved by as much as the likely value of the sum. */
  private static Figure money(
      Figures figures,
      String id,
      String name,
      double likely,
      List<Member> members,
      Function<MeasureMoney, Optional<Figure>> part) {
    List<Figure> parts =
        members.stream().flatMap(m -> part.apply(m.entry().costed().money()).stream()).toList();
    double sum = parts.stream().mapToDouble(Figure::likely).sum();
    double low = parts.stream().mapToDouble(f -> f.value().low()).sum() - sum;
    double high = parts.stream().mapToDouble(f -> f.value().high()).sum() - sum;
    boolean once = id.equals("first_cost");
    return figures.of(
        id,
        name,
        new Range(likely + Math.min(0, low), likely, likely + Math.max(0, high)),
        once ? Unit.MONEY : Unit.MONEY_PER_YEAR,
        once ? SUM : SUM_OF_AIR,
        parts.stream().map(f -> Input.of("i", f)).toList(),
        List.of());
  }

  private static Figure energy(Figures figures, String id, String name, double likely, Unit unit) {
    return figures.of(id, name, Range.exactly(likely), unit, SUM_OF_AIR, List.of(), List.of());
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
        all(members, MeasureBenefits::comfort),
        all(members, MeasureBenefits::health),
        all(members, MeasureBenefits::fabric));
  }

  private static List<String> all(
      List<Member> members, Function<MeasureBenefits, List<String>> kind) {
    return members.stream()
        .flatMap(m -> kind.apply(m.measure().benefits()).stream())
        .distinct()
        .toList();
  }
}
