package org.drysill.report.verdict;

import org.drysill.report.words.Words;
import org.drysill.survey.Edition;

/** The heading of the report: one sentence without a full stop that carries the finding. */
final class Headline {
  private Headline() {}

  static String of(State state, Edition edition) {
    return switch (edition) {
      case SURVEY, BRIEF -> survey(state);
      case RECORD -> record(state);
      case REMEDIATION -> remediation(state);
    };
  }

  private static String survey(State state) {
    return switch (state.air()) {
      case SHORT -> "The air is short, " + shortAir(state);
      case MEETS -> "The air is enough, " + enoughAir(state);
      case UNKNOWN -> unknownAir(state);
    };
  }

  private static String shortAir(State state) {
    if (state.worst().isPresent()) {
      return "and the " + state.worst().get() + " pays for it";
    }
    if (state.windowsWet() > 0) {
      return "and " + windows(state) + " it on cold nights";
    }
    return state.placesLooked() > 0
        ? "though the surfaces looked at stay dry"
        : "and how cold the surfaces get was not measured";
  }

  private static String windows(State state) {
    return state.windowsWet() == 1
        ? "a window shows"
        : Words.number(state.windowsWet()) + " windows show";
  }

  private static String enoughAir(State state) {
    if (state.worst().isPresent()) {
      return "but the " + state.worst().get() + " is too cold for it";
    }
    if (state.windowsWet() > 0) {
      return "but "
          + Words.count(state.windowsWet(), "window is", "windows are")
          + " too cold to stay dry";
    }
    if (!state.shortRooms().isEmpty()) {
      return "but the fan in the " + room(state) + " is not";
    }
    return state.placesLooked() > 0
        ? "and the surfaces looked at stay dry"
        : "and how cold the surfaces get was not measured";
  }

  private static String unknownAir(State state) {
    if (state.worst().isPresent()) {
      return Words.capital("the " + state.worst().get())
          + " is at risk; whether the air is enough cannot be told yet";
    }
    if (!state.shortRooms().isEmpty()) {
      return "The extract in the "
          + room(state)
          + " is short; whether the home gets enough air cannot be told yet";
    }
    if (state.windowsWet() > 0) {
      return Words.capital(Words.count(state.windowsWet(), "window gets", "windows get"))
          + " wet on cold nights; whether the air is enough cannot be told yet";
    }
    return "Whether the air is enough cannot be told from what was measured";
  }

  private static String record(State state) {
    String where =
        state.worst().map(w -> "the " + w).orElse(state.windowsWet() > 0 ? "the windows" : "");
    return switch (state.air()) {
      case SHORT ->
          where.isEmpty()
              ? "Your home gets less fresh air than is recommended"
              : "Your home gets less fresh air than is recommended, and "
                  + where
                  + " "
                  + (state.worst().isPresent() ? "shows" : "show")
                  + " it first";
      case MEETS ->
          where.isEmpty()
              ? "Your home gets the fresh air it should, and it stays dry"
              : "Your home gets the fresh air it should, but "
                  + where
                  + " "
                  + (state.worst().isPresent() ? "stays" : "stay")
                  + " cold enough to turn damp";
      case UNKNOWN ->
          where.isEmpty()
              ? "Your home may need more fresh air; one more reading would tell"
              : "Watch " + where + "; whether the air is enough needs a reading";
    };
  }

  private static String remediation(State state) {
    String air =
        switch (state.air()) {
          case SHORT -> "At this visit the home gets less air than is asked";
          case MEETS -> "At this visit the home gets the air that is asked";
          case UNKNOWN -> "At this visit it cannot be told whether the air is enough";
        };
    int places = state.spotsAtRisk() + state.windowsWet();
    if (state.placesLooked() == 0) {
      return air;
    }
    return places == 0
        ? air + ", and no place looked at is at risk"
        : air + ", and " + Words.count(places, "place is", "places are") + " at risk";
  }

  private static String room(State state) {
    return Words.shortened(state.shortRooms().get(0), 44);
  }
}
