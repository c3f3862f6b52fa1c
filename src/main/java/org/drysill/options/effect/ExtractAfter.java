package org.drysill.options.effect;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.AirMove;

/** The extract of the room of a new fan against what is asked of fans of its kind. */
record ExtractAfter(Assessment assessment, Figures figures) {

  List<Finding> of(Candidate candidate, NewFlow flow) {
    boolean takesOut =
        candidate
            .measure()
            .air()
            .filter(a -> a.moves() == AirMove.EXTRACT || a.moves() == AirMove.EXCHANGE)
            .isPresent();
    if (!takesOut || flow.asked().isEmpty()) {
      return List.of();
    }
    return candidate.rooms().stream()
        .map(r -> finding(r, flow, flow.asked().orElseThrow()))
        .toList();
  }

  private Finding finding(RoomFacts room, NewFlow flow, double asked) {
    return new Finding(
        "options.ventilation.extract." + room.id(),
        "Extract of the " + room.name(),
        Optional.of(room.id()),
        Verdict.atLeast(flow.running(), asked),
        Direction.AT_LEAST,
        Optional.of(figure("extract.provided", "extract with it", flow.running(), flow)),
        Optional.of(
            figure("extract.asked", "extract asked of such a fan", Range.exactly(asked), flow)),
        "It would be set to the rate that "
            + assessment.ventilation().rules().title()
            + " asks of such a fan; have the flow measured when it is fitted.",
        Optional.empty(),
        List.of(flow.source()));
  }

  private Figure figure(String id, String name, Range value, NewFlow flow) {
    return figures.of(
        id,
        name,
        value,
        Unit.AIRFLOW,
        flow.basis(),
        "the rate of the rule set for the room",
        List.of(),
        List.of(flow.source()));
  }
}
