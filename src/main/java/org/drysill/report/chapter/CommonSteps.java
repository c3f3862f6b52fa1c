package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** The measures that all of the best packages have, and those that none has. */
final class CommonSteps {
  private static final int MOST_ROWS = 12;

  private CommonSteps() {}

  static List<Block> of(PackagesResult packages) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(PackageWords.said("Do first.", first(packages)));
    if (!packages.inNone().isEmpty()) {
      blocks.add(inNone(packages));
    }
    return blocks;
  }

  private static String first(PackagesResult packages) {
    String best = Words.count(packages.comparedWith(), "best package", "best packages");
    return packages.doFirst().isEmpty()
        ? "No measure is in all of the "
            + best
            + ": there are several ways, and the first step of package A is the best beginning."
        : "In all of the " + best + ": " + Words.sentence(String.join("; ", packages.doFirst()));
  }

  private static Grid inNone(PackagesResult packages) {
    return Grid.wide(
        "In none of the best packages",
        List.of(Cells.words("measure", 80), Cells.words("because")),
        packages.inNone().stream()
            .limit(MOST_ROWS)
            .map(n -> Cells.row(Cells.text(n.title()), Cells.text(n.because())))
            .toList(),
        packages.inNone().size() > MOST_ROWS
            ? "The first " + MOST_ROWS + " of " + packages.inNone().size() + "."
            : "");
  }
}
