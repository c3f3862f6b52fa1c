package org.drysill.options.effect;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.MeasurePlace;

/** What a new flow adds to the flows of a home, and which fans it takes the place of. */
record FlowChanges(Assessment assessment) {

  FlowChange of(Candidate candidate, AirEffect air, Range flow) {
    List<FanFlow> replaced = replaced(candidate, air);
    Range supply = sum(replaced.stream().map(FanFlow::supply).toList());
    Range extract = sum(replaced.stream().map(FanFlow::extract).toList());
    return switch (air.moves()) {
      case EXTRACT -> FlowChange.extracting(flow, extract);
      case SUPPLY -> FlowChange.supplying(flow);
      case EXCHANGE -> FlowChange.exchanging(flow, supply, extract);
      case INFILTRATION -> FlowChange.infiltrating(flow);
      case TRANSFER -> FlowChange.NONE;
    };
  }

  /** The fans that a measure takes the place of: those of its rooms that only take air out. */
  private List<FanFlow> replaced(Candidate candidate, AirEffect air) {
    if (!air.replacesExtract().orElse(false)) {
      return List.of();
    }
    return assessment.ventilation().provided().fans().stream()
        .filter(f -> f.counting() == FanFlow.Counting.EXTRACT)
        .filter(f -> candidate.measure().place() == MeasurePlace.HOME || here(candidate, f))
        .toList();
  }

  private static boolean here(Candidate candidate, FanFlow fan) {
    List<String> fans = candidate.scope().fans();
    return fans.isEmpty()
        ? candidate.room().map(RoomFacts::id).equals(Optional.of(fan.room()))
        : fans.contains(fan.fan().id());
  }

  private static Range sum(List<Figure> figures) {
    return figures.stream().map(Figure::value).reduce(Range.exactly(0), Range::plus);
  }
}
