package org.drysill.assess.ventilation.rooms;

import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.survey.RoomUse;

/**
 * A place that air passes through: a heated room, or a hall that the survey does not list.
 *
 * @param id the room's id; empty for a hall that is taken for granted
 * @param facts the room; empty for a hall that is taken for granted
 */
record Place(String id, Optional<RoomFacts> facts) {
  /** The hall that is taken for granted where the survey lists none. */
  static final Place UNSEEN_HALL = new Place("", Optional.empty());

  static Place of(RoomFacts room) {
    return new Place(room.id(), Optional.of(room));
  }

  String name() {
    return facts.map(RoomFacts::name).orElse("Hall, not surveyed");
  }

  boolean isHall() {
    return facts.map(f -> f.room().use() == RoomUse.HALL).orElse(true);
  }

  /** Floor area [m²]; nothing is known of a hall that was not surveyed. */
  double floorAreaM2() {
    return facts.map(f -> f.floorArea().likely()).orElse(0.0);
  }

  int storey() {
    return facts.flatMap(f -> f.room().storey()).orElse(0);
  }
}
