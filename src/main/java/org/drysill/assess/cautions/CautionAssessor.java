package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.cautions.Caution;
import org.drysill.reference.cautions.CautionFacts;

/**
 * Decides which cautions a report prints. A caution is shown for a fact of the survey, or because a
 * measure that names it would be carried out in this home.
 *
 * @param cautions all published cautions, the gravest first
 * @param facts from which facts they are shown
 */
public record CautionAssessor(List<Caution> cautions, CautionFacts facts) {
  /** Copies the list. */
  public CautionAssessor {
    cautions = List.copyOf(cautions);
  }

  /** The cautions that the home calls for as it stands. */
  public CautionsResult assess(Home home) {
    FactTriggers triggers = new FactTriggers(home, facts);
    return new CautionsResult(
        cautions.stream().flatMap(c -> shown(c, triggers.of(c.trigger())).stream()).toList());
  }

  /**
   * The cautions that belong to work in a home, the gravest first.
   *
   * @param ids the cautions that the measure names
   * @param home the home
   * @param rooms the rooms in which the work would be; empty for the whole home
   */
  public List<ShownCaution> ofWork(List<String> ids, Home home, List<RoomFacts> rooms) {
    WorkTriggers triggers = new WorkTriggers(home, facts);
    return cautions.stream()
        .filter(c -> ids.contains(c.id()))
        .flatMap(c -> shown(c, triggers.of(c.trigger(), rooms)).stream())
        .toList();
  }

  /** The word of a room's notes that points to water from elsewhere. */
  public Optional<String> ingressWord(RoomFacts room) {
    return Signs.ingress(room, facts);
  }

  /** True where an appliance is known to take its air from the room and lead its fumes outside. */
  public boolean openFlued(Home home) {
    return !Appliances.openFlued(home).isEmpty();
  }

  private static Optional<ShownCaution> shown(Caution caution, Optional<Reason> reason) {
    return reason.map(r -> new ShownCaution(caution, r.because(), r.rooms()));
  }
}
