package org.drysill.options.effect;

import java.util.Comparator;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.ExtractRate;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.Terminal;
import org.drysill.survey.RoomUse;

/** The extract rate of a rule set for a room, at which a new fan would be set. */
final class ExtractRates {
  private static final double SECONDS_PER_HOUR = 3600;

  private ExtractRates() {}

  /** The rate of a mode, the greatest where several hold; empty where none is printed. */
  static Optional<Asked> of(RuleSet rules, RoomFacts room, ExtractMode mode, Terminal terminal) {
    return rules.extract().stream()
        .filter(r -> r.mode() == mode && r.when().isEmpty() && holds(r.room(), room.room().use()))
        .filter(r -> r.terminal().map(t -> t == terminal).orElse(true))
        .map(r -> new Asked(flow(r, room), r))
        .max(Comparator.comparingDouble(Asked::flow));
  }

  /**
   * What is asked.
   *
   * @param flow the flow [m³/s]
   * @param rate the row that asks it
   */
  record Asked(double flow, ExtractRate rate) {}

  private static double flow(ExtractRate rate, RoomFacts room) {
    return rate.rate()
        .map(q -> q.value())
        .orElseGet(
            () ->
                rate.airChange().orElseThrow().value() * room.volume().likely() / SECONDS_PER_HOUR);
  }

  private static boolean holds(RoomGroup group, RoomUse use) {
    return switch (group) {
      case KITCHEN -> use == RoomUse.KITCHEN || use == RoomUse.KITCHEN_DINING;
      case BATHROOM -> use == RoomUse.BATHROOM || use == RoomUse.SHOWER_ROOM;
      case SANITARY -> use == RoomUse.WC;
      case UTILITY -> use == RoomUse.UTILITY;
      case BEDROOM, LIVING, HABITABLE -> false;
    };
  }
}
