package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.recovery.cycle.CyclesSeen;
import org.drysill.yaml.Moment;

/**
 * What one test at a unit gives.
 *
 * @param at when it was taken
 * @param form how the temperatures were taken
 * @param difference indoors less outdoors [K]
 * @param quality how much it can tell
 * @param supplyRatio (supply - outdoor) / (indoor - outdoor) with its error
 * @param exhaustRatio (extract - exhaust) / (extract - outdoor) with its error; shown apart, never
 *     mixed with the other
 * @param cycles how the unit turns, from a log
 * @param why the reason of the quality in a plain sentence
 * @param warnings what else makes it doubtful
 */
public record RecoveryTest(
    Optional<Moment> at,
    TestForm form,
    Optional<Figure> difference,
    TestQuality quality,
    Optional<Figure> supplyRatio,
    Optional<Figure> exhaustRatio,
    Optional<CyclesSeen> cycles,
    String why,
    List<String> warnings) {
  /** Copies the list. */
  public RecoveryTest {
    warnings = List.copyOf(warnings);
  }
}
