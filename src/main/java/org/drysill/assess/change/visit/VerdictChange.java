package org.drysill.assess.change.visit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;

/**
 * A comparison with a published figure that came out otherwise at the later visit.
 *
 * @param id id of the finding at both visits
 * @param subject what was compared
 * @param before how it came out
 * @param after how it came out
 * @param because the reason at the later visit
 */
public record VerdictChange(
    String id, String subject, Verdict before, Verdict after, String because) {
  /** The comparisons of both visits that came out otherwise, in the order of the later one. */
  public static List<VerdictChange> of(VisitFacts before, VisitFacts after) {
    Map<String, Finding> earlier = new HashMap<>();
    before.findings().forEach(finding -> earlier.putIfAbsent(finding.id(), finding));
    List<VerdictChange> all = new ArrayList<>();
    for (Finding finding : after.findings()) {
      Finding was = earlier.get(finding.id());
      if (was != null && was.verdict() != finding.verdict()) {
        all.add(
            new VerdictChange(
                finding.id(),
                finding.subject(),
                was.verdict(),
                finding.verdict(),
                finding.because()));
      }
    }
    return all;
  }
}
