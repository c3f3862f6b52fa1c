package org.drysill.assess.logs.air;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drysill.assess.logs.air.AirChangeOfLog.Refused;
import org.drysill.physics.tracer.Decay;
import org.drysill.physics.tracer.Decays;
import org.drysill.physics.tracer.Rejection;

/** Counts refused falls by reason, the most frequent first. */
final class Refusals {
  private Refusals() {}

  static List<Refused> of(Decays decays) {
    Map<Rejection, Integer> counts = new TreeMap<>();
    for (Decay.Rejected decay : decays.rejected()) {
      counts.merge(decay.reason(), 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .map(e -> new Refused(said(e.getKey()), e.getValue()))
        .sorted(Comparator.comparingInt(Refused::count).reversed())
        .toList();
  }

  private static String said(Rejection reason) {
    return switch (reason) {
      case TOO_FEW_READINGS -> "too few readings";
      case LEVEL_BEFORE_UNKNOWN -> "nobody knows the level before the rise";
      case TOO_SHORT -> "too short";
      case CUT_BY_GAP -> "cut off by a gap";
      case ROSE_AGAIN -> "rose again too soon";
      case TOO_FLAT -> "stopped falling while still high";
      case TOO_WEAK -> "began too low";
      case OUTDOOR_MOVED -> "outdoor air moved meanwhile";
      case NOT_EXPONENTIAL -> "no single rate: people or doors moved";
      case NOT_SMOOTH -> "not smooth";
      case TOO_UNCERTAIN -> "too uncertain";
    };
  }
}
