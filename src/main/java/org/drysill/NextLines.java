package org.drysill;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.options.NextReading;
import org.drysill.report.words.Words;

/** What to measure next in a line each, the most telling first, for whoever checks a survey. */
final class NextLines {
  private NextLines() {}

  static List<String> of(Visit visit, Assessment assessment) {
    List<String> lines = new ArrayList<>();
    for (NextReading reading : Study.options(visit.own().data(), assessment).next()) {
      lines.add("To measure next, " + (lines.size() + 1) + ": " + line(reading));
    }
    return lines;
  }

  static String line(NextReading reading) {
    return Words.sentence(reading.ask())
        + " "
        + Words.sentence("With " + reading.with())
        + " "
        + Words.sentence(reading.when())
        + " It alone would take away "
        + String.join(", ", shares(reading))
        + ".";
  }

  private static List<String> shares(NextReading reading) {
    List<String> shares = new ArrayList<>();
    add(shares, reading.ofAir(), "whether there is enough air");
    add(shares, reading.ofMould(), "whether walls and corners stay free of mould");
    add(shares, reading.ofRanking(), "which package of measures costs less");
    return shares;
  }

  private static void add(List<String> shares, double share, String of) {
    if (share > 0) {
      String what = shares.isEmpty() ? " % of the doubt " : " % of that ";
      shares.add(Math.round(100 * share) + what + of);
    }
  }
}
