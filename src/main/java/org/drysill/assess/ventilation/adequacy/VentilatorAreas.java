package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.reference.rules.BackgroundArea;
import org.drysill.reference.rules.BackgroundRule;
import org.drysill.reference.rules.RoomGroup;

/** The areas of background ventilators that a rule prints for rooms. */
final class VentilatorAreas {
  private final BackgroundRule rule;
  private final RuleFacts facts;

  VentilatorAreas(BackgroundRule rule, RuleFacts facts) {
    this.rule = rule;
    this.facts = facts;
  }

  /** The row for a kind of room; empty where the rule asks for none in it. */
  Optional<BackgroundArea> of(RoomGroup group) {
    return rule.areas().stream()
        .filter(row -> isAmong(row.rooms(), group))
        .filter(row -> row.when().map(facts::holds).orElse(true))
        .findFirst();
  }

  Optional<BackgroundArea> of(RoomFacts room) {
    return RuleFacts.group(room.room().use()).flatMap(this::of);
  }

  /** True where a kind of room is among kinds, one of which may contain it. */
  static boolean isAmong(List<RoomGroup> kinds, RoomGroup group) {
    boolean staysIn = group == RoomGroup.BEDROOM || group == RoomGroup.LIVING;
    return kinds.contains(group) || (staysIn && kinds.contains(RoomGroup.HABITABLE));
  }
}
