package org.drysill.report.appendix;

import java.util.ArrayList;
import java.util.List;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;

/** What a survey gives and this version does not evaluate, so that nobody takes it for assessed. */
final class LeftAside {
  private LeftAside() {}

  /** Sentences; none where everything given was evaluated. */
  static List<String> of(Survey survey) {
    List<String> said = new ArrayList<>();
    if (survey.rooms().stream().anyMatch(LeftAside::photographed)) {
      said.add("Photos are named with a hash and not printed.");
    }
    return said;
  }

  private static boolean photographed(Room room) {
    return !room.photos().isEmpty()
        || room.coldSpots().stream().anyMatch(s -> !s.photos().isEmpty())
        || room.windows().stream().anyMatch(w -> !w.photos().isEmpty());
  }
}
