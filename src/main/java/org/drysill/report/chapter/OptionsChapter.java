package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.options.FirstThing;
import org.drysill.options.NotHere;
import org.drysill.options.OptionsResult;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** What could be done: what comes first, packages and measures, what is not here and why. */
final class OptionsChapter implements Chapter {
  private static final int IN_FULL = 4;
  private static final int IN_FULL_OF_PACKAGE = 4;
  private static final int IN_TABLE = 16;

  @Override
  public Optional<Section> write(Desk desk) {
    OptionsResult options = desk.subject().options();
    if (options.first().isEmpty() && options.ranked().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    first(desk, blocks);
    options
        .packages()
        .ifPresentOrElse(
            p -> {
              blocks.addAll(PackageBlocks.of(desk, p));
              inFull(desk, blocks);
            },
            () -> oneByOne(desk, blocks));
    if (!options.ranked().isEmpty()) {
      blocks.add(table(desk, options.ranked()));
    }
    blocks.addAll(NextBlocks.of(desk));
    if (options.packages().isEmpty()) {
      budget(options).ifPresent(blocks::add);
    }
    if (!options.beyondBudget().isEmpty()) {
      blocks.add(new Subhead(List.of(), "Beyond the budget"));
      blocks.add(beyond(desk.numbers(), options.beyondBudget()));
    }
    if (!options.notHere().isEmpty()) {
      blocks.add(new Subhead(List.of(), "Not here, and why"));
      blocks.add(notHere(options.notHere()));
    }
    return Optional.of(
        new Section("options", heading(options), "What could be done", false, blocks));
  }

  /** What comes before every measure; an owner has read it on the first pages. */
  private static void first(Desk desk, List<Block> blocks) {
    List<FirstThing> first = desk.subject().options().first();
    if (first.isEmpty()) {
      return;
    }
    blocks.add(new Subhead(List.of(), "Before anything else"));
    if (desk.plain()) {
      blocks.add(
          new Prose(
              List.of(),
              "",
              "",
              Words.capital(Words.count(first.size(), "thing comes", "things come"))
                  + " before every measure. They stand in full under “What to do and when”."));
    } else {
      blocks.addAll(FirstSteps.steps(desk, first));
    }
    blocks.addAll(RepairedBlocks.of(desk));
  }

  /** The measures of the best package in full, and the others in the table alone. */
  private static void inFull(Desk desk, List<Block> blocks) {
    OptionsResult options = desk.subject().options();
    List<RankedMeasure> works = options.works();
    if (!works.isEmpty()) {
      blocks.add(new Subhead(List.of(), "The works, each by itself"));
      for (int i = 0; i < Math.min(IN_FULL_OF_PACKAGE, works.size()); i++) {
        blocks.add(MeasureStep.of(desk, works.get(i), i + 1));
      }
    }
    if (!options.ranked().isEmpty()) {
      blocks.add(new Subhead(List.of(), "Every measure by itself"));
      blocks.add(
          new Prose(
              List.of(),
              "",
              "",
              "What each would do alone, best first: what closes more of what is lacking, in"
                  + " quarters, then what costs less a year. Effects of several are not the sum."));
    }
  }

  private static void oneByOne(Desk desk, List<Block> blocks) {
    OptionsResult options = desk.subject().options();
    if (!options.first().isEmpty()) {
      blocks.add(new Subhead(List.of(), "Then, in this order"));
    }
    blocks.add(
        new Prose(
            List.of(), "", "", "Each measure is studied by itself. What decides, in this order:"));
    blocks.add(new Bullets(List.of(), options.rule().stream().map(Words::sentence).toList()));
    options.ranked().stream()
        .limit(IN_FULL)
        .forEach(m -> blocks.add(MeasureStep.of(desk, m, m.rank())));
    CostChart.of(desk).ifPresent(c -> blocks.add(ChartBlocks.wide("cost", c)));
  }

  private static String heading(OptionsResult options) {
    if (options.ranked().isEmpty()) {
      return "What comes before every measure";
    }
    String best = Words.shortened(options.works().get(0).title(), 70);
    return options.first().isEmpty()
        ? "What deserves the money first: " + Words.within(best)
        : "After what cannot wait: "
            + best.substring(0, 1).toLowerCase(Locale.ROOT)
            + best.substring(1);
  }

  private static Grid table(Desk desk, List<RankedMeasure> ranked) {
    Numbers numbers = desk.numbers();
    List<RankedMeasure> shown = ranked.stream().limit(IN_TABLE).toList();
    return Grid.wide(
        "Cost and effect of the measures",
        List.of(
            Cells.numbers("", 7),
            Cells.words("measure"),
            Cells.numbers("air, " + numbers.unit(Unit.AIRFLOW), 14),
            Cells.numbers("moisture in the air, %", 18),
            Cells.numbers("first cost, " + numbers.unit(Unit.MONEY), 34),
            Cells.numbers("to run a year", 16),
            Cells.numbers("all in all a year", 18)),
        shown.stream().map(m -> row(numbers, m)).toList(),
        shown.size() < ranked.size()
            ? "The first " + IN_TABLE + " of " + ranked.size() + " that were studied."
            : "All in all: first cost, running and replacement as equal yearly payments.");
  }

  private static Row row(Numbers numbers, RankedMeasure measure) {
    var effect = measure.effect();
    var money = measure.money();
    return Cells.row(
        Cells.text(Integer.toString(measure.rank())),
        Cells.text(measure.title()),
        Cells.text(effect.addedAir().map(numbers::plain).orElse(Cells.NOTHING)),
        Cells.text(effect.excessChange().map(numbers::plain).orElse(Cells.NOTHING)),
        Cells.value(numbers, money.firstCost()),
        Cells.text(money.runningCost().map(numbers::plain).orElse(Cells.NOTHING)),
        Cells.text(money.annualCost().map(numbers::plain).orElse(Cells.NOTHING)));
  }

  private static Optional<Block> budget(OptionsResult options) {
    return options
        .budget()
        .map(
            b ->
                new Prose(
                    List.of(),
                    "",
                    "What the stated money buys.",
                    String.join(" ", b.words().stream().map(Words::sentence).toList())));
  }

  private static Grid beyond(Numbers numbers, List<RankedMeasure> measures) {
    return Grid.wide(
        "",
        List.of(
            Cells.words("measure", 50),
            Cells.numbers("first cost, " + numbers.unit(Unit.MONEY), 36),
            Cells.words("why apart, and what it would do")),
        measures.stream()
            .map(
                m ->
                    Cells.row(
                        Cells.text(m.title()),
                        Cells.value(numbers, m.money().firstCost()),
                        Cells.text(String.join(" ", m.reasons()))))
            .toList(),
        "");
  }

  /** Measures of one reason stand together. */
  private static Grid notHere(List<NotHere> measures) {
    Map<String, List<String>> titles = new LinkedHashMap<>();
    for (NotHere measure : measures) {
      titles.computeIfAbsent(measure.because(), b -> new ArrayList<>()).add(measure.title());
    }
    return Grid.wide(
        "",
        List.of(Cells.words("measures", 94), Cells.words("not here, because")),
        titles.entrySet().stream()
            .map(
                e -> Cells.row(Cells.text(String.join("; ", e.getValue())), Cells.text(e.getKey())))
            .toList(),
        "");
  }
}
