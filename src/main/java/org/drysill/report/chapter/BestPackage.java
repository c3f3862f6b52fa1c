package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.options.MeasurePackage;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The best package: why, the order of works, what it takes, what is not money. */
final class BestPackage {
  private final Numbers numbers;
  private final PackageWords words;

  private BestPackage(PackageWords words) {
    this.numbers = words.numbers();
    this.words = words;
  }

  static List<Block> of(PackageWords words) {
    BestPackage writer = new BestPackage(words);
    MeasurePackage best = words.best();
    List<Block> blocks = new ArrayList<>();
    blocks.add(PackageWords.said("Package A.", PackageWords.why(best)));
    blocks.add(writer.works(best));
    blocks.add(writer.year(best));
    benefits(best, blocks);
    return blocks;
  }

  private Grid works(MeasurePackage best) {
    return Grid.wide(
        "Package A in the order of the works, and what is left after each step",
        List.of(
            Cells.numbers("", 7),
            Cells.words("step"),
            Cells.numbers("mould, months", 24),
            Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 24),
            Cells.numbers("wet glass, months", 24)),
        steps(best),
        "Before them comes what is listed above as coming before anything else.");
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

  private Block year(MeasurePackage best) {
    return PackageWords.said(
        "What package A takes in a year.",
        "Heat "
            + numbers.full(best.heat())
            + ", electricity "
            + numbers.full(best.electricity())
            + ", carbon dioxide "
            + numbers.full(best.co2())
            + (saves(best) ? "; less than nothing is a saving." : ".")
            + humidity(best));
  }

  private static boolean saves(MeasurePackage one) {
    return Stream.of(one.heat(), one.electricity(), one.co2()).anyMatch(f -> f.value().low() < 0);
  }

  private String humidity(MeasurePackage best) {
    return best.winterHumidity()
        .flatMap(
            then ->
                words
                    .packages()
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

  private static void benefits(MeasurePackage best, List<Block> blocks) {
    List<String> benefits =
        Stream.of(best.benefits().comfort(), best.benefits().health(), best.benefits().fabric())
            .flatMap(List::stream)
            .toList();
    if (!benefits.isEmpty()) {
      blocks.add(
          PackageWords.said(
              "Not counted in money.", Words.sentence(Words.list(benefits, Words::within))));
    }
  }
}
