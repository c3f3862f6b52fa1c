package org.drysill.assess.model;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.reference.Sourced;

/** A room's reading against the model, in words. */
final class RoomWords {
  private RoomWords() {}

  static Finding read(
      RoomFacts room, Figure measured, Figure modelled, boolean explained, Sourced limit) {
    boolean damper = measured.likely() > modelled.likely();
    return new Finding(
        "model.room." + room.id(),
        room.name() + ", read against the model",
        Optional.of(room.id()),
        explained ? Verdict.MEETS : damper ? Verdict.SHORT : Verdict.UNKNOWN,
        Direction.AGREES,
        Optional.of(measured),
        Optional.of(modelled),
        explained ? "Its sources, its air and the rooms around it explain it." : why(damper),
        explained ? Optional.empty() : Optional.of(again(room)),
        List.of(limit.source()));
  }

  static Finding notRead(RoomFacts room, Figure modelled) {
    return new Finding(
        "model.room." + room.id(),
        room.name() + ", by the model alone",
        Optional.of(room.id()),
        Verdict.UNKNOWN,
        Direction.NONE,
        Optional.empty(),
        Optional.of(modelled),
        "No humidity was read there together with outdoors.",
        Optional.empty(),
        List.of());
  }

  private static String why(boolean damper) {
    return damper
        ? "It holds more water than its sources, its air and the rooms around it explain. A leak or"
            + " damp fabric, a source that is not listed, a fan that does not do what was recorded,"
            + " or a reading taken while or just after somebody washed, showered or cooked."
        : "It holds less water than its sources, its air and the rooms around it explain. A window"
            + " that stood open, more air than was recorded, or sources that are elsewhere.";
  }

  private static String again(RoomFacts room) {
    return "Read temperature and humidity again: "
        + room.name()
        + ", windows shut, no washing or cooking for two hours before; better, leave a logger there"
        + " for a week.";
  }
}
