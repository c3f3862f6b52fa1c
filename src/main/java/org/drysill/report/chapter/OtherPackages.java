package org.drysill.report.chapter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** What would be best under other terms: a test passed, more money, glass that stays dry. */
final class OtherPackages {
  private final Numbers numbers;
  private final PackagesResult packages;
  private final PackageWords words;

  private OtherPackages(PackageWords words) {
    this.numbers = words.numbers();
    this.packages = words.packages();
    this.words = words;
  }

  static List<Block> of(PackageWords words) {
    OtherPackages writer = new OtherPackages(words);
    return Stream.of(writer.onceTested(), writer.beyondBudget(), writer.dryGlass())
        .flatMap(Optional::stream)
        .toList();
  }

  /** What is best where the appliance that takes its air from the room is no obstacle. */
  private Optional<Block> onceTested() {
    return packages
        .onceTested()
        .map(
            p -> {
              MeasurePackage best = words.best();
              double more = p.annualCost().likely() - best.annualCost().likely();
              return PackageWords.said(
                  "Once a spillage test is passed.",
                  "Fans that take air out can be chosen then, or as soon as it is sure that nothing"
                      + " here burns with air of the room. The best package, T, would cost "
                      + numbers.full(p.firstCost())
                      + " at the start and "
                      + numbers.one(Math.abs(more), Unit.MONEY_PER_YEAR)
                      + (more < 0 ? " less" : " more")
                      + " than A, all in all: "
                      + words.measures(p)
                      + ". "
                      + words.apart(p)
                      + " A has both in "
                      + Math.round(100 * best.spread().enough().share())
                      + " of 100 cases.");
            });
  }

  private Optional<Block> beyondBudget() {
    return packages
        .beyondBudget()
        .map(
            p ->
                PackageWords.said(
                    "Beyond the budget.",
                    "Without it the best package would be another, for "
                        + numbers.full(p.firstCost())
                        + " at the start: "
                        + words.measures(p)
                        + ". "
                        + words.apart(p)));
  }

  /** What tier 3 costs on top. */
  private Optional<Block> dryGlass() {
    return packages
        .dryGlass()
        .filter(p -> !packages.best().isEmpty())
        .map(
            p -> {
              MeasurePackage best = words.best();
              double first = p.firstCost().likely() - best.firstCost().likely();
              double annual = p.annualCost().likely() - best.annualCost().likely();
              return PackageWords.said(
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
                      + words.measures(p)
                      + ".");
            });
  }

  /** What that means at the window that is wettest. */
  private static String mornings(MeasurePackage dry, MeasurePackage best) {
    return ", and at the wettest window "
        + Words.count(dry.year().wetMornings(), "wet morning", "wet mornings")
        + " a year in place of "
        + best.year().wetMornings();
  }
}
