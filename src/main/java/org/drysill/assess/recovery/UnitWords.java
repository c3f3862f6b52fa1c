package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.recovery.RecoveryRatio;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/**
 * What is known of a unit, in plain sentences.
 *
 * @param defaults what is taken for granted
 */
record UnitWords(RecoveryDefaults defaults) {

  /** A subject for findings: the unit, after its room where its name does not say the room. */
  static String subject(RoomFacts room, String name) {
    boolean said = name.toLowerCase(Locale.ROOT).contains(room.name().toLowerCase(Locale.ROOT));
    return capital(said ? name : room.name() + ": " + name);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The verdict. */
  static String verdict(Optional<Figure> declared, Optional<Figure> measured) {
    if (measured.isPresent()) {
      return "It keeps about %s of the heat of the air that passes it (%s to %s)."
          .formatted(
              Numbers.reached(measured.get().likely()),
              Numbers.percent(measured.get().value().low()),
              Numbers.percent(measured.get().value().high()));
    }
    return declared
        .map(
            d ->
                "Its maker declares %s; nobody has measured what it keeps in this home."
                    .formatted(Numbers.percent(d.likely())))
        .orElse("Neither a declared nor a measured heat recovery is known.");
  }

  /** What else the reader should know. */
  List<String> notes(Fan fan, Optional<Figure> measured, Optional<Figure> effective) {
    List<String> notes = new ArrayList<>();
    if (fan.heatRecoveryTests().isEmpty()) {
      notes.add("No temperatures were taken at it: the declared figure stands alone.");
    }
    if (fan.kind() == FanKind.ALTERNATING_HEAT_RECOVERY) {
      notes.add("It exchanges half of the flow of a phase: it blows in half of the time.");
    }
    notes.add(flows(measured, effective));
    if (fan.kind() == FanKind.FITTED_BUT_NOT_WORKING) {
      notes.add("It does not work, so it saves nothing now.");
    }
    return List.copyOf(notes);
  }

  private String flows(Optional<Figure> measured, Optional<Figure> effective) {
    if (effective.isPresent()) {
      return "The flows in and out were both measured; the smaller one governs, and of all the air"
          + " %s of the heat is kept.".formatted(Numbers.reached(effective.get().likely()));
    }
    String unknown = "The flows in and out were not both measured; if they differ it recovers less";
    double less = defaults.unbalanceShown().likely();
    return measured
        .map(
            m ->
                unknown
                    + ": with %s less one way, %s of the heat of all the air instead of %s."
                        .formatted(
                            Numbers.percent(less),
                            Numbers.reached(
                                RecoveryRatio.effectiveUnderUnbalance(m.likely(), 1 - less, 1)),
                            Numbers.reached(m.likely())))
        .orElse(unknown + ".");
  }
}
