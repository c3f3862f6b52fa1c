package org.drysill.assess.recovery.cycle;

import org.drysill.physics.recovery.cycle.CycleOutcome;
import org.drysill.reference.recovery.CycleCriteria;

/** Why a log shows no cycle, in a sentence. */
final class NoCycleWords {
  private NoCycleWords() {}

  static String of(CycleOutcome.None none, CycleCriteria rules) {
    return "Refused: "
        + switch (none.why()) {
          case TOO_SHORT -> "the log has hardly any reading.";
          case NO_DIFFERENCE -> "indoors was no warmer than outdoors.";
          case NO_SWING ->
              "the temperature at the grille does not swing, so the unit did not turn, or the"
                  + " thermometer is too slow to follow it.";
          case SCATTER ->
              "from one reading to the next, %s s, the temperature at the grille jumps as much as it"
                      .formatted(Said.seconds(none.stepS()))
                  + " does over longer times: too few readings, or an unsteady thermometer.";
          case TOO_COARSE ->
              "a reading every %s s shows no half-cycle of %s s; it takes one every %s s or so."
                  .formatted(
                      Said.seconds(none.stepS()),
                      Said.seconds(none.halfCycleS()),
                      Said.seconds(rules.halfCycle().likely() / rules.enoughSamples().likely()));
          case TOO_SLOW ->
              "the temperature at the grille turns every %s min, slower than any unit; it follows"
                      .formatted(Said.number(none.halfCycleS() / 60))
                  + " something else, such as the heating.";
          case TOO_FAST ->
              "the temperature at the grille turns every %s s, faster than any unit."
                  .formatted(Said.seconds(none.halfCycleS()));
          case IRREGULAR ->
              "the temperature at the grille turns, but at no steady pace, so no half-cycle is"
                  + " known to be whole.";
          case TOO_FEW ->
              "only %d whole cycles are in the log; it takes %d at least, and %d to tell much."
                  .formatted(
                      none.cycles(),
                      Math.round(rules.fewestCycles().likely()),
                      Math.round(rules.enoughCycles().likely()));
        };
  }
}
