package org.drysill.verify;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.report.Report;
import org.drysill.report.json.JsonTree;

/** Holds the results inside a report against those that its files give again. */
final class Figures {
  private static final String PROVENANCE = "provenance";

  private Figures() {}

  static Statement compared(Claim claim, Report again, Origin origin, Sources sources)
      throws IOException {
    boolean fully = origin.same() && sources.missingPictures().isEmpty();
    List<String> differences =
        Differences.between(
            results(claim.results(), fully), results(JsonTree.read(again.json()), fully));
    if (differences.isEmpty()) {
      return Statement.agrees("The files inside give every figure of the results again.");
    }
    return Statement.differs(
        "The files inside give other figures than the results inside tell: "
            + (differences.size() == 1 ? "1 value." : differences.size() + " values."),
        differences);
  }

  /** What made a report is compared elsewhere where it was not all the same. */
  private static Object results(Object tree, boolean fully) {
    if (fully || !(tree instanceof Map<?, ?> map)) {
      return tree;
    }
    Map<Object, Object> figures = new LinkedHashMap<>(map);
    figures.remove(PROVENANCE);
    return figures;
  }
}
