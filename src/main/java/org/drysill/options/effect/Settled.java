package org.drysill.options.effect;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.options.site.Candidate;
import org.drysill.reference.measures.AirMove;

/** Which of today's published comparisons of fans and openings fall short and would no longer. */
record Settled(VentilationResult today) {

  /**
   * The ids of the findings.
   *
   * @param candidate the measure and its places
   * @param extract the extract of its rooms with it
   */
  List<String> by(Candidate candidate, List<Finding> extract) {
    List<String> rooms = candidate.rooms().stream().map(RoomFacts::id).toList();
    return Stream.concat(
            extract.stream()
                .filter(f -> f.verdict() == Verdict.MEETS)
                .flatMap(f -> f.room().stream())
                .flatMap(this::extractOf),
            openings(candidate).stream().filter(f -> f.room().filter(rooms::contains).isPresent()))
        .filter(f -> f.verdict() == Verdict.SHORT)
        .map(Finding::id)
        .toList();
  }

  /** The findings of a room; none where one way of meeting what is asked is met already. */
  private Stream<Finding> extractOf(String room) {
    List<Finding> there =
        today.extract().stream().filter(f -> f.room().filter(room::equals).isPresent()).toList();
    return there.stream().anyMatch(f -> f.verdict() == Verdict.MEETS)
        ? Stream.empty()
        : there.stream();
  }

  private List<Finding> openings(Candidate candidate) {
    AirMove moves = candidate.measure().air().map(a -> a.moves()).orElse(AirMove.EXTRACT);
    return switch (moves) {
      case TRANSFER -> today.transfer();
      case INFILTRATION -> today.background();
      case EXTRACT, SUPPLY, EXCHANGE -> List.of();
    };
  }
}
