package org.drysill.report.verdict;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** The readings that would settle what cannot be told, or replace what was assumed. */
public final class WouldChange {
  private WouldChange() {}

  /** Readings as instructions, those that settle a verdict first, each once. */
  public static List<String> readings(Desk desk) {
    Set<String> readings = new LinkedHashSet<>();
    for (Finding finding : desk.found().findings()) {
      if (finding.verdict() == Verdict.UNKNOWN) {
        finding.settledBy().ifPresent(s -> readings.add(Words.sentence(s)));
      }
    }
    for (Finding finding : desk.found().findings()) {
      finding.settledBy().ifPresent(s -> readings.add(Words.sentence(s)));
    }
    return List.copyOf(readings);
  }

  static String brief(Desk desk, int most) {
    List<String> readings = readings(desk);
    return readings.isEmpty()
        ? "Nothing that is open would change a verdict; the appendix lists what was assumed."
        : String.join(
            " ", readings.stream().limit(most).map(r -> Words.shortened(r, 180)).toList());
  }
}
