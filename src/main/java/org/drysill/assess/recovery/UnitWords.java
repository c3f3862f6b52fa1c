package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/** What is known of a unit, in plain sentences. */
final class UnitWords {
  private UnitWords() {}

  /** A subject for findings. */
  static String subject(RoomFacts room, String name) {
    return room.name().substring(0, 1).toUpperCase(Locale.ROOT)
        + room.name().substring(1)
        + ": "
        + name;
  }

  /** The verdict. */
  static String verdict(Optional<Figure> declared, Optional<Figure> measured) {
    if (measured.isPresent()) {
      return "It keeps about %s of the heat of the air that passes it (%s to %s)."
          .formatted(
              Numbers.percent(measured.get().likely()),
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
  static List<String> notes(Fan fan, Optional<Figure> effective) {
    List<String> notes = new ArrayList<>();
    if (fan.heatRecoveryTests().isEmpty()) {
      notes.add("No temperatures were taken at it: the declared figure stands alone.");
    }
    if (fan.kind() == FanKind.ALTERNATING_HEAT_RECOVERY) {
      notes.add("It exchanges half of the flow of a phase: it blows in half of the time.");
    }
    notes.add(
        effective.isPresent()
            ? "The flows of both units of the pair were measured; the smaller one governs."
            : "The flows in and out were not both measured; if they differ it recovers less.");
    if (fan.kind() == FanKind.FITTED_BUT_NOT_WORKING) {
      notes.add("It does not work, so it saves nothing now.");
    }
    return List.copyOf(notes);
  }
}
