package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.options.Chance;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackageSpread;
import org.drysill.options.PackagesResult;
import org.drysill.options.Sureness;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Subhead;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Measures done together: the best packages, in which order, what belongs to all and to none. */
final class PackageBlocks {
  private static final int NOT_HERE = 12;

  private final Numbers numbers;
  private final PackagesResult packages;
  private final String baseline;
  private final List<Block> blocks = new ArrayList<>();

  private PackageBlocks(Numbers numbers, String baseline, PackagesResult packages) {
    this.numbers = numbers;
    this.baseline = baseline;
    this.packages = packages;
  }

  static List<Block> of(Desk desk, PackagesResult packages) {
    PackageBlocks writer =
        new PackageBlocks(desk.numbers(), RepairedBlocks.baseline(desk), packages);
    writer.write(desk);
    return writer.blocks;
  }

  private void write(Desk desk) {
    blocks.add(new Subhead(List.of(), "What is best done together"));
    say(
        "",
        "Measures act on the same air and the same walls, so effects cannot be added up. "
            + Words.capital(Words.count(packages.measures(), "measure", "measures"))
            + " were combined in every sensible way: "
            + String.format(
                Locale.ROOT,
                "%,d packages, each month by month at likely values.",
                packages.evaluated())
            + looked()
            + " What decides, in this order:");
    blocks.add(new Bullets(List.of(), packages.rule()));
    if (packages.best().isEmpty()) {
      say("None helps.", "No package within the budget closes anything that is lacking.");
    } else {
      blocks.add(table());
      packages.sureness().ifPresent(sure -> blocks.add(chances(sure)));
      blocks.add(hours());
      best(packages.best().get(0));
      packages.best().stream().skip(1).forEach(p -> say("Package " + p.name() + ".", why(p)));
      CostPartsChart.of(desk, packages).ifPresent(c -> chart("cost-parts", c));
      RiskMonthsChart.of(packages, baseline).ifPresent(c -> chart("risk-months", c));
      PackageChart.of(desk, packages).ifPresent(c -> chart("packages", c));
      front();
      doFirst();
      budgets();
    }
    onceTested();
    beyond();
    dryGlass();
    limits();
  }

  /** Which of them were looked at more closely. */
  private String looked() {
    return packages
        .sureness()
        .map(
            sure ->
                " The "
                    + sure.packages()
                    + " that may turn out best were then reckoned "
                    + sure.samples()
                    + " times, with air, water, doors, surfaces, effects and prices each time drawn"
                    + " anew from what they may be, the same for all packages.")
        .orElse("");
  }

  private Grid chances(Sureness sure) {
    return Grid.wide(
        "How sure that is: cases in 100",
        List.of(
            Cells.words("", 16),
            Cells.numbers("enough air", 21),
            Cells.numbers("no mould risk", 21),
            Cells.numbers("both", 21),
            Cells.numbers("both, hour by hour", 21),
            Cells.numbers("both, and dry glass", 21),
            Cells.numbers("cheapest with both", 21),
            Cells.numbers("all in all a year, " + numbers.unit(Unit.MONEY), 30)),
        Stream.concat(packages.best().stream(), Stream.of(packages.today()))
            .map(this::chances)
            .toList(),
        "Counted in "
            + sure.samples()
            + " samples by the means of months, and once more by those of all hours, so good to about "
            + Math.round(100 * sure.coarseness())
            + " in 100. The yearly cost is the middle one; nine in ten lie between those in"
            + " brackets.");
  }

  private Grid hours() {
    return Grid.wide(
        "Hour by hour over a year: the worst place of each",
        List.of(
            Cells.words("", 12),
            Cells.numbers("wet mornings", 30),
            Cells.numbers("hours with water settling on glass", 40),
            Cells.numbers("highest mould index", 30),
            Cells.numbers("hours with humid air", 30)),
        Stream.concat(packages.best().stream(), Stream.of(packages.today()))
            .map(this::hours)
            .toList(),
        "A year of 365 mornings and 8,760 hours, at the wettest window, the wall or corner with the"
            + " most mould, the dampest room with cold places, at likely values; nine in ten samples"
            + " lie between the mornings in brackets. Humid: above 70 %. The index goes"
            + " from 0 to 6; from 1 mould is found under a microscope, from 3 it is seen.");
  }

  private Row hours(MeasurePackage one) {
    return Cells.row(
        Cells.text(name(one)),
        Cells.value(numbers, one.spread().hourly().wetMornings(), Unit.COUNT, Rounding.NEAREST),
        Cells.text(numbers.plain(one.year().wetHours(), Unit.COUNT, Rounding.NEAREST)),
        Cells.text(numbers.plain(one.year().mould(), Unit.MOULD_INDEX, Rounding.UP)),
        Cells.text(numbers.plain(one.year().humidHours(), Unit.COUNT, Rounding.NEAREST)));
  }

  private Row chances(MeasurePackage one) {
    PackageSpread spread = one.spread();
    return Cells.row(
        Cells.text(name(one)),
        cases(spread.air()),
        cases(spread.walls()),
        cases(spread.enough()),
        cases(spread.hourly().enough()),
        cases(spread.dryGlass()),
        cases(spread.first()),
        Cells.value(numbers, spread.annualCost(), Unit.MONEY, Rounding.NEAREST));
  }

  private static Cell cases(Chance chance) {
    return Cells.text(Long.toString(Math.round(100 * chance.share())));
  }

  private Grid table() {
    return Grid.wide(
        baseline.equals("today")
            ? "The best packages, and the home as it is"
            : "The best packages, and the home once mended",
        List.of(
            Cells.words("", 16),
            Cells.words("measures"),
            Cells.numbers("first cost, " + numbers.unit(Unit.MONEY), 30),
            Cells.numbers("to run a year", 15),
            Cells.numbers("all in all a year", 15),
            Cells.numbers("mould, months", 15),
            Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 15),
            Cells.numbers("wet glass, months", 15)),
        Stream.of(
                packages.best().stream(),
                packages.onceTested().stream(),
                Stream.of(packages.today()))
            .flatMap(p -> p)
            .map(this::row)
            .toList(),
        "Months at risk in a year, summed over walls and corners, and over windows. All in all:"
            + " first cost, running and replacement as equal yearly payments."
            + packages
                .onceTested()
                .map(t -> " T: only once a spillage test is passed, see below.")
                .orElse(""));
  }

  /** The package without steps is the home that all are held against. */
  private String name(MeasurePackage one) {
    return one.steps().isEmpty() ? baseline : one.name();
  }

  private Row row(MeasurePackage one) {
    return Cells.row(
        Cells.text(name(one)),
        Cells.text(measures(one)),
        Cells.value(numbers, one.firstCost()),
        Cells.text(numbers.plain(one.runningCost())),
        Cells.text(numbers.plain(one.annualCost())),
        Cells.text(Integer.toString(one.mouldMonths())),
        Cells.text(numbers.plain(one.lacks())),
        Cells.text(Integer.toString(one.wetGlassMonths())));
  }

  /** The measures of a package; where most are those of the best one, what differs. */
  private String measures(MeasurePackage one) {
    MeasurePackage best = packages.best().get(0);
    if (one.steps().isEmpty()) {
      return "nothing";
    }
    List<String> more = new ArrayList<>(one.titles());
    more.removeAll(best.titles());
    List<String> less = new ArrayList<>(best.titles());
    less.removeAll(one.titles());
    boolean like = !one.equals(best) && more.size() + less.size() < one.titles().size();
    return like
        ? "as "
            + best.name()
            + (less.isEmpty() ? "" : ", without: " + String.join("; ", less))
            + (more.isEmpty()
                ? ""
                : (less.isEmpty() ? ", with: " : "; but with: ") + String.join("; ", more))
        : String.join("; ", one.titles());
  }

  /** The best one: why, the order of works, what it takes, what is not money. */
  private void best(MeasurePackage best) {
    say("Package A.", why(best));
    blocks.add(
        Grid.wide(
            "Package A in the order of the works, and what is left after each step",
            List.of(
                Cells.numbers("", 7),
                Cells.words("step"),
                Cells.numbers("mould, months", 24),
                Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 24),
                Cells.numbers("wet glass, months", 24)),
            steps(best),
            "Before them comes what is listed above as coming before anything else."));
    say(
        "What package A takes in a year.",
        "Heat "
            + numbers.full(best.heat())
            + ", electricity "
            + numbers.full(best.electricity())
            + ", carbon dioxide "
            + numbers.full(best.co2())
            + "; less than nothing is a saving."
            + humidity(best));
    List<String> benefits =
        Stream.of(best.benefits().comfort(), best.benefits().health(), best.benefits().fabric())
            .flatMap(List::stream)
            .toList();
    if (!benefits.isEmpty()) {
      say("Not counted in money.", Words.sentence(Words.list(benefits, Words::within)));
    }
  }

  private List<Row> steps(MeasurePackage best) {
    List<Row> rows = new ArrayList<>();
    for (MeasurePackage.Step step : best.steps()) {
      rows.add(
          Cells.row(
              Cells.text(Integer.toString(rows.size() + 1)),
              Cells.text(step.title()),
              Cells.text(Integer.toString(step.mouldMonths())),
              Cells.text(numbers.plain(step.lacksM3S(), Unit.AIRFLOW, Rounding.UP)),
              Cells.text(Integer.toString(step.wetGlassMonths()))));
    }
    return rows;
  }

  private String humidity(MeasurePackage best) {
    return best.winterHumidity()
        .flatMap(
            then ->
                packages
                    .today()
                    .winterHumidity()
                    .map(
                        now ->
                            " In the coldest month the rooms with cold places then hold "
                                + numbers.full(then)
                                + " relative humidity in the mean, without it "
                                + numbers.full(now)
                                + "."))
        .orElse("");
  }

  private void doFirst() {
    if (!packages.doFirst().isEmpty()) {
      say(
          "Do first.",
          "In all of the "
              + Words.count(packages.comparedWith(), "best package", "best packages")
              + ": "
              + Words.sentence(String.join("; ", packages.doFirst())));
    } else {
      say(
          "Do first.",
          "No measure is in all of the "
              + Words.count(packages.comparedWith(), "best package", "best packages")
              + ": there are several ways, and the first step of package A is the best beginning.");
    }
    if (!packages.inNone().isEmpty()) {
      blocks.add(
          Grid.wide(
              "In none of the best packages",
              List.of(Cells.words("measure", 80), Cells.words("because")),
              packages.inNone().stream()
                  .limit(NOT_HERE)
                  .map(n -> Cells.row(Cells.text(n.title()), Cells.text(n.because())))
                  .toList(),
              packages.inNone().size() > NOT_HERE
                  ? "The first " + NOT_HERE + " of " + packages.inNone().size() + "."
                  : ""));
    }
  }

  private void budgets() {
    if (packages.budgets().isEmpty()) {
      return;
    }
    blocks.add(
        Grid.wide(
            "What a sum of money buys",
            List.of(
                Cells.numbers("up to, " + numbers.unit(Unit.MONEY), 20),
                Cells.words("the best package for it"),
                Cells.numbers("first cost", 20),
                Cells.numbers("mould left, months", 24),
                Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 24)),
            packages.budgets().stream()
                .map(
                    b ->
                        Cells.row(
                            Cells.text(numbers.plain(b.money(), Unit.MONEY, Rounding.NEAREST)),
                            Cells.text(
                                String.join("; ", b.titles())
                                    + (b.stopGap() ? " (with a stop-gap)" : "")),
                            Cells.text(numbers.plain(b.spent(), Unit.MONEY, Rounding.NEAREST)),
                            Cells.text(Integer.toString(b.mouldMonths())),
                            Cells.text(numbers.plain(b.lacksM3S(), Unit.AIRFLOW, Rounding.UP))))
                .toList(),
            "Likely first costs."));
  }

  /** What is best where the appliance that takes its air from the room is no obstacle. */
  private void onceTested() {
    packages
        .onceTested()
        .ifPresent(
            p -> {
              double more = p.annualCost().likely() - packages.best().get(0).annualCost().likely();
              say(
                  "Once a spillage test is passed.",
                  "Fans that take air out can be chosen then, or as soon as it is sure that nothing"
                      + " here burns with air of the room. The best package, T, would cost "
                      + numbers.full(p.firstCost())
                      + " at the start and "
                      + numbers.one(Math.abs(more), Unit.MONEY_PER_YEAR)
                      + (more < 0 ? " less" : " more")
                      + " than A, all in all: "
                      + Words.sentence(String.join("; ", p.titles()))
                      + " "
                      + why(p)
                      + " A has both in "
                      + Math.round(100 * packages.best().get(0).spread().enough().share())
                      + " of 100 cases.");
            });
  }

  private void beyond() {
    packages
        .beyondBudget()
        .ifPresent(
            p ->
                say(
                    "Beyond the budget.",
                    "Without it the best package would be another, for "
                        + numbers.full(p.firstCost())
                        + " at the start: "
                        + Words.sentence(String.join("; ", p.titles()))
                        + " "
                        + why(p)));
  }

  /** What tier 3 costs on top. */
  private void dryGlass() {
    packages
        .dryGlass()
        .filter(p -> !packages.best().isEmpty())
        .ifPresent(
            p -> {
              MeasurePackage best = packages.best().get(0);
              double first = p.firstCost().likely() - best.firstCost().likely();
              double annual = p.annualCost().likely() - best.annualCost().likely();
              say(
                  "What dry glass costs on top.",
                  "The package that goes as far and keeps glass driest leaves "
                      + Words.count(p.wetGlassMonths(), "wet month", "wet months")
                      + ", summed over windows, in place of "
                      + best.wetGlassMonths()
                      + mornings(p, best)
                      + ". Beside package A it costs "
                      + numbers.one(annual, Unit.MONEY_PER_YEAR)
                      + " more, all in all, and "
                      + numbers.one(first, Unit.MONEY)
                      + " more at the start: "
                      + Words.sentence(String.join("; ", p.titles())));
            });
  }

  /** What that means at the window that is wettest. */
  private static String mornings(MeasurePackage dry, MeasurePackage best) {
    return ", and at the wettest window "
        + Words.count(dry.year().wetMornings(), "wet morning", "wet mornings")
        + " a year in place of "
        + best.year().wetMornings();
  }

  /** What the front does for glass, where its ends were followed hour by hour. */
  private void front() {
    List<PackagesResult.FrontPoint> followed =
        packages.front().stream().filter(p -> p.hourly().isPresent()).toList();
    if (followed.size() > 2) {
      List<Range> mornings =
          followed.stream().flatMap(p -> p.hourly().stream()).map(h -> h.wetMornings()).toList();
      Range least = mornings.stream().min(Comparator.comparingDouble(Range::likely)).orElseThrow();
      Range most = mornings.stream().max(Comparator.comparingDouble(Range::likely)).orElseThrow();
      say(
          "Glass along that curve.",
          Words.capital(Words.count(followed.size(), "package", "packages"))
              + " of it were followed hour by hour in all samples. "
              + (most.high() < 1
                  ? "With none of them any window is seen to be wet in the morning."
                  : "Mornings with wet glass at the wettest window: from "
                      + numbers.spread(least, Unit.COUNT)
                      + " to "
                      + numbers.spread(most, Unit.COUNT)
                      + " a year."));
    }
  }

  private void limits() {
    List<String> said = new ArrayList<>(packages.limits());
    if (!packages.leftOut().isEmpty()) {
      said.add("Not combined: " + String.join(" ", packages.leftOut()));
    }
    blocks.add(new Prose(List.of(), "small", "", String.join(" ", said)));
  }

  private static String why(MeasurePackage one) {
    return String.join(" ", one.reasons());
  }

  private void chart(String id, ChartSpec chart) {
    blocks.add(ChartBlocks.wide(id, chart));
  }

  private void say(String lead, String text) {
    blocks.add(new Prose(List.of(), "", lead, text));
  }
}
