package org.drysill.assess.recovery.cycle;

import java.util.ArrayList;
import java.util.List;
import org.drysill.physics.recovery.cycle.CycleRatio;
import org.drysill.reference.recovery.CycleCriteria;
import org.drysill.reference.recovery.RecoveryDefaults;

/**
 * Why a log tells less than it should.
 *
 * @param defaults what a test should have
 * @param figures the figures of the log
 */
record Weakness(RecoveryDefaults defaults, CycleFigures figures) {

  /** The reasons in clauses. */
  List<String> of(double differenceK, CycleRatio cycles) {
    CycleCriteria criteria = defaults.cycles();
    double half = cycles.timing().cycleS() / 2;
    double samples = half / cycles.stepS();
    List<String> weak = new ArrayList<>();
    if (differenceK < defaults.indicativeBelow().likely()) {
      weak.add(
          "indoors was %s K warmer than outdoors, and a test counts fully from %s K up"
              .formatted(
                  Said.number(differenceK), Said.number(defaults.indicativeBelow().likely())));
    }
    if (cycles.used() < criteria.enoughCycles().likely()) {
      weak.add(
          "%d whole cycles could be used, and it takes %s"
              .formatted(cycles.used(), Said.number(criteria.enoughCycles().likely())));
    }
    if (samples < criteria.enoughSamples().likely()) {
      weak.add(
          "a half-cycle holds %s readings, and it takes %s"
              .formatted(Said.number(samples), Said.number(criteria.enoughSamples().likely())));
    }
    if (figures.isSlow(cycles)) {
      weak.add(
          "the thermometer at the grille follows with a time constant of %s s in a half-cycle of"
                  .formatted(Said.seconds(cycles.timing().lagS()))
              + " %s s, flattens the swing and may hide a lower ratio"
                  .formatted(Said.seconds(half)));
    }
    return weak;
  }
}
