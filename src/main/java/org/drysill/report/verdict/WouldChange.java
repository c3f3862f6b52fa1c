package org.drysill.report.verdict;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.options.NextReading;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** The readings that would settle what cannot be told, or replace what was assumed. */
public final class WouldChange {
  private WouldChange() {}

  /**
   * Readings as instructions, each once: those that take away most of the doubt about verdicts and
   * ranking first, then those that settle a verdict, then the rest. What an earlier one makes
   * needless is left out.
   */
  public static List<String> readings(Desk desk) {
    Set<String> readings = new LinkedHashSet<>();
    List<NextReading> next = desk.subject().options().next();
    next.forEach(n -> readings.add(Words.sentence(n.ask())));
    for (Finding finding : desk.found().findings()) {
      if (finding.verdict() == Verdict.UNKNOWN) {
        settling(finding, next).ifPresent(readings::add);
      }
    }
    for (Finding finding : desk.found().findings()) {
      settling(finding, next).ifPresent(readings::add);
    }
    return List.copyOf(readings);
  }

  /** The same without those that take away most of the doubt, which have a page of their own. */
  public static List<String> others(Desk desk) {
    List<String> readings = readings(desk);
    return readings.subList(
        Math.min(desk.subject().options().next().size(), readings.size()), readings.size());
  }

  private static Optional<String> settling(Finding finding, List<NextReading> next) {
    return finding
        .settledBy()
        .filter(s -> next.stream().noneMatch(n -> n.covers(s, finding.room())))
        .map(Words::sentence);
  }

  /** The first reading with what and when, then more of them in short. */
  static String brief(Desk desk, int most) {
    List<String> readings = readings(desk);
    if (readings.isEmpty()) {
      return "Nothing that is open would change a verdict; the appendix lists what was assumed.";
    }
    List<String> said = new ArrayList<>();
    readings.stream().limit(most).forEach(r -> said.add(Words.shortened(r, 180)));
    desk.subject().options().next().stream()
        .findFirst()
        .ifPresent(n -> said.set(0, Words.shortened(first(n), 300)));
    return String.join(" ", said);
  }

  private static String first(NextReading next) {
    return Words.sentence(next.ask())
        + " It alone would take away "
        + Math.round(100 * next.most())
        + Numbers.JOIN
        + "% of the doubt "
        + doubt(next)
        + ".";
  }

  private static String doubt(NextReading next) {
    if (next.ofAir() >= next.most()) {
      return "whether there is enough air";
    }
    return next.ofMould() >= next.most()
        ? "whether walls and corners stay free of mould"
        : "which package of measures costs less";
  }
}
