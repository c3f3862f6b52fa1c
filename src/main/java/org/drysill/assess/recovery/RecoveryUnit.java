package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.survey.FanKind;

/**
 * A unit with heat recovery.
 *
 * @param id the survey's id of the fan
 * @param room the survey's id of the room
 * @param roomName the room's name in sentences
 * @param name its own name in sentences
 * @param kind what it is
 * @param tests what each test gives, in the order of the survey
 * @param declared temperature ratio that its maker declares
 * @param measured temperature ratio on the supply side from all usable tests together
 * @param effective the share recovered of all outdoor air, where flows in and out are known to
 *     differ
 * @param declaredAgainstMeasured whether the measured ratio reaches the declared one
 * @param saved what it saves at the temperatures of its tests
 * @param sleeve its pipe as a cold bridge
 * @param notes what else the reader should know
 * @param verdict the result in one plain sentence
 */
public record RecoveryUnit(
    String id,
    String room,
    String roomName,
    String name,
    FanKind kind,
    List<RecoveryTest> tests,
    Optional<Figure> declared,
    Optional<Figure> measured,
    Optional<Figure> effective,
    Optional<Finding> declaredAgainstMeasured,
    Optional<HeatSaved> saved,
    Optional<SleeveBridge> sleeve,
    List<String> notes,
    String verdict) {
  /** Copies the lists. */
  public RecoveryUnit {
    tests = List.copyOf(tests);
    notes = List.copyOf(notes);
  }
}
