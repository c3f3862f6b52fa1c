package org.drysill.report.chapter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.year.RoomYear;
import org.drysill.options.Chance;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackageSpread;
import org.drysill.options.PackagesResult;
import org.drysill.options.Sureness;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;

/** The best packages side by side: what they do and cost, how sure that is, hour by hour. */
final class PackageTables {
  private final Numbers numbers;
  private final PackagesResult packages;
  private final PackageWords words;

  PackageTables(PackageWords words) {
    this.numbers = words.numbers();
    this.packages = words.packages();
    this.words = words;
  }

  /** What they do and cost. */
  Grid table() {
    return Grid.wide(
        words.baseline().equals("today")
            ? "The best packages, and the home as it is"
            : "The best packages, and the home once mended",
        List.of(
            Cells.words("", 14),
            Cells.words("measures"),
            Cells.numbers("first cost, " + numbers.unit(Unit.MONEY), 27),
            Cells.numbers("to run a year", 14),
            Cells.numbers("all in all a year", 14),
            Cells.numbers("mould, months", 14),
            Cells.numbers("air lacking, " + numbers.unit(Unit.AIRFLOW), 14),
            Cells.numbers("wet glass, months", 14)),
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

  private Row row(MeasurePackage one) {
    return Cells.row(
        Cells.text(words.name(one)),
        Cells.text(words.measures(one)),
        Cells.value(numbers, one.firstCost()),
        Cells.text(numbers.plain(one.runningCost())),
        Cells.text(numbers.plain(one.annualCost())),
        Cells.text(Integer.toString(one.mouldMonths())),
        Cells.text(numbers.plain(one.lacks())),
        Cells.text(Integer.toString(one.wetGlassMonths())));
  }

  /** How sure that is. */
  Grid chances(Sureness sure) {
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

  private Row chances(MeasurePackage one) {
    PackageSpread spread = one.spread();
    return Cells.row(
        Cells.text(words.name(one)),
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

  /**
   * The worst places of each over the hours of a year; none where no package and not the home as it
   * is leaves anything wet, mouldy or humid.
   */
  Optional<Grid> hours() {
    List<MeasurePackage> shown =
        Stream.concat(packages.best().stream(), Stream.of(packages.today())).toList();
    if (shown.stream().allMatch(PackageTables::isDry)) {
      return Optional.empty();
    }
    return Optional.of(
        Grid.wide(
            "Hour by hour over a year: the worst place of each",
            List.of(
                Cells.words("", 16),
                Cells.numbers("wet mornings", 30),
                Cells.numbers("hours with water settling on glass", 40),
                Cells.numbers("highest mould index", 30),
                Cells.numbers("hours with humid air", 30)),
            shown.stream().map(this::hours).toList(),
            "A year of 365 mornings and 8,760 hours, at the wettest window, the wall or corner with"
                + " the most mould, the dampest room with cold places, at likely values; nine in ten"
                + " samples lie between the mornings in brackets. Humid: above 70 %. The index goes"
                + " from 0 to 6; from 1 mould is found under a microscope, from 3 it is seen."));
  }

  private static boolean isDry(MeasurePackage one) {
    return one.year().equals(RoomYear.NONE) && one.spread().hourly().wetMornings().high() <= 0;
  }

  private Row hours(MeasurePackage one) {
    return Cells.row(
        Cells.text(words.name(one)),
        Cells.value(numbers, one.spread().hourly().wetMornings(), Unit.COUNT, Rounding.NEAREST),
        Cells.text(numbers.plain(one.year().wetHours(), Unit.COUNT, Rounding.NEAREST)),
        Cells.text(numbers.plain(one.year().mould(), Unit.MOULD_INDEX, Rounding.UP)),
        Cells.text(numbers.plain(one.year().humidHours(), Unit.COUNT, Rounding.NEAREST)));
  }
}
