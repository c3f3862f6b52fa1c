package org.drysill.options.packs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Assessment;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.physics.Range;

/**
 * Extract that wet rooms lack, room by room [m³/s]: of a room that is short today the most that any
 * rate for it lacks, with new fans what the best of them lacks against the rate for its kind.
 *
 * @param today what each room that is short lacks today
 */
record WetRooms(Map<String, Double> today) {
  static WetRooms of(Assessment assessment) {
    Map<String, Double> lacks = new LinkedHashMap<>();
    for (Finding finding : assessment.ventilation().extract()) {
      if (finding.verdict() == Verdict.SHORT && finding.room().isPresent()) {
        lacks.merge(finding.room().get(), lack(finding), Math::max);
      }
    }
    return new WetRooms(lacks);
  }

  /** What all of them lack with these measures. */
  double lack(List<Member> members) {
    return lack(members, (member, provided) -> provided.likely());
  }

  /**
   * The same where fans may move more or less than is likely.
   *
   * @param moved what the fan of a measure moves while it runs, of what it may [m³/s]
   */
  double lack(List<Member> members, ToDoubleBiFunction<Member, Range> moved) {
    double sum = 0;
    for (Map.Entry<String, Double> room : today.entrySet()) {
      double least = room.getValue();
      for (Member member : members) {
        for (Finding with : member.effect().extract()) {
          if (with.room().filter(room.getKey()::equals).isPresent()) {
            least = Math.min(least, lack(with, range -> moved.applyAsDouble(member, range)));
          }
        }
      }
      sum += least;
    }
    return sum;
  }

  private static double lack(Finding finding) {
    return lack(finding, Range::likely);
  }

  /** Nothing provided lacks all that is asked. */
  private static double lack(Finding finding, ToDoubleFunction<Range> provided) {
    double asked = finding.required().map(r -> r.likely()).orElse(0.0);
    return Math.max(
        0, asked - finding.provided().map(p -> provided.applyAsDouble(p.value())).orElse(0.0));
  }
}
