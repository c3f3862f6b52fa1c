package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.recovery.cycle.CyclesSeen;
import org.drysill.assess.recovery.cycle.LoggedCycles;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.HeatRecoveryTest;

/**
 * Words what a log of cycles gives as a test among others.
 *
 * @param defaults what is taken for granted
 * @param test the test that names the log
 */
record LoggedTest(RecoveryDefaults defaults, HeatRecoveryTest test) {

  RecoveryTest of(LoggedCycles logged) {
    return new RecoveryTest(
        test.at(),
        TestForm.LOG,
        logged.difference(),
        quality(logged),
        logged.supplyRatio(),
        logged.exhaustRatio(),
        logged.seen(),
        logged.refused().orElseGet(() -> why(logged, logged.seen().orElseThrow())),
        logged.warnings());
  }

  private static TestQuality quality(LoggedCycles logged) {
    if (logged.refused().isPresent()) {
      return TestQuality.REFUSED;
    }
    return logged.weak().isEmpty() ? TestQuality.NORMAL : TestQuality.INDICATIVE;
  }

  private String why(LoggedCycles logged, CyclesSeen seen) {
    String found =
        "%d whole cycles of %d s count%s."
            .formatted(
                seen.used(),
                Math.round(seen.supplyTime().likely() + seen.otherTime().likely()),
                leftOut(seen));
    return logged.weak().isEmpty()
        ? found
            + " Indoors was %s K warmer than outdoors; the laboratory takes %s K."
                .formatted(
                    Numbers.number(tenths(logged.difference().orElseThrow().likely())),
                    Numbers.number(defaults.laboratoryDifference().likely()))
        : "Indicative only: " + String.join("; ", logged.weak()) + ". " + found;
  }

  private static double tenths(double value) {
    return Math.round(10 * value) / 10.0;
  }

  private static String leftOut(CyclesSeen seen) {
    List<String> left = new ArrayList<>();
    if (seen.settling() > 0) {
      left.add(seen.settling() + " at the start, while its store settled");
    }
    if (seen.incomplete() > 0) {
      left.add(
          seen.incomplete() + (seen.incomplete() == 1 ? " that was" : " that were") + " not whole");
    }
    return left.isEmpty() ? "" : "; left out were " + String.join(", and ", left);
  }
}
