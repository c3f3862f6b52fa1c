package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Subhead;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** Measures done together: the best packages, in which order, what belongs to all and to none. */
final class PackageBlocks {
  private final Desk desk;
  private final PackagesResult packages;
  private final PackageWords words;
  private final List<Block> blocks = new ArrayList<>();

  private PackageBlocks(Desk desk, PackagesResult packages) {
    this.desk = desk;
    this.packages = packages;
    this.words = new PackageWords(desk.numbers(), RepairedBlocks.baseline(desk), packages);
  }

  static List<Block> of(Desk desk, PackagesResult packages) {
    PackageBlocks writer = new PackageBlocks(desk, packages);
    writer.write();
    return writer.blocks;
  }

  private void write() {
    blocks.add(new Subhead(List.of(), "What is best done together"));
    say("", how());
    blocks.add(new Bullets(List.of(), packages.rule()));
    if (packages.best().isEmpty()) {
      say("None helps.", "No package within the budget closes anything that is lacking.");
    } else {
      best();
    }
    blocks.addAll(OtherPackages.of(words));
    limits();
  }

  private String how() {
    return "Measures act on the same air and the same walls, so effects cannot be added up. "
        + Words.capital(Words.count(packages.measures(), "measure", "measures"))
        + " were combined in every sensible way: "
        + String.format(
            Locale.ROOT,
            "%,d packages, each month by month at likely values.",
            packages.evaluated())
        + looked()
        + " What decides, in this order:";
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

  private void best() {
    PackageTables tables = new PackageTables(words);
    blocks.add(tables.table());
    packages.sureness().ifPresent(sure -> blocks.add(tables.chances(sure)));
    tables.hours().ifPresent(blocks::add);
    blocks.addAll(BestPackage.of(words));
    others();
    CostPartsChart.of(desk, packages).ifPresent(c -> chart("cost-parts", c));
    RiskMonthsChart.of(packages, words.baseline()).ifPresent(c -> chart("risk-months", c));
    blocks.addAll(new FrontBlocks(desk, packages, words.baseline()).all());
    blocks.addAll(CommonSteps.of(packages));
    blocks.addAll(new PackagesByMoney(words).budgets());
  }

  /** What sets the others apart, once for those that are alike. */
  private void others() {
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (MeasurePackage other : packages.best().subList(1, packages.best().size())) {
      String why = words.apart(other);
      names
          .computeIfAbsent(why.isEmpty() ? "As package A." : why, w -> new ArrayList<>())
          .add(other.name());
    }
    names.forEach(
        (why, all) ->
            say((all.size() > 1 ? "Packages " : "Package ") + Words.list(all) + ".", why));
  }

  private void limits() {
    List<String> said = new ArrayList<>(packages.limits());
    if (!packages.leftOut().isEmpty()) {
      said.add("Not combined: " + String.join(" ", packages.leftOut()));
    }
    blocks.add(new Prose(List.of(), "small", "", String.join(" ", said)));
  }

  private void chart(String id, ChartSpec chart) {
    blocks.add(ChartBlocks.wide(id, chart));
  }

  private void say(String lead, String text) {
    blocks.add(PackageWords.said(lead, text));
  }
}
