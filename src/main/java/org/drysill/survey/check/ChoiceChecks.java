package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.MouldSeen;
import org.drysill.survey.Survey;

/** What can be given in several ways is given in one. */
final class ChoiceChecks {
  private ChoiceChecks() {}

  static void check(Survey survey, CheckList list) {
    var rules = survey.dwelling().jurisdiction();
    one(list, "dwelling.jurisdiction", "rules, file", rules.rules(), rules.file());
    survey
        .dwelling()
        .climate()
        .ifPresent(
            c ->
                one(
                    list,
                    "dwelling.climate",
                    "location, file, monthly",
                    c.location(),
                    c.file(),
                    c.monthly()));
    each(
        survey.rooms(),
        "rooms",
        (room, path) ->
            each(room.coldSpots(), path + ".cold_spots", (spot, at) -> coldSpot(spot, at, list)));
  }

  private static void one(CheckList list, String key, String ways, Optional<?>... given) {
    List<?> there = Stream.of(given).flatMap(Optional::stream).toList();
    if (there.size() != 1) {
      String found = there.isEmpty() ? "none of them" : there.size() + " of them";
      list.add(SurveyCode.NOT_EXACTLY_ONE, key, found, "exactly one of " + ways);
    }
  }

  private static void coldSpot(ColdSpot spot, String path, CheckList list) {
    if (spot.temperatureFactor().isPresent() && !spot.readings().isEmpty()) {
      list.add(
          SurveyCode.FACTOR_AND_READINGS,
          path + ".temperature_factor",
          "readings as well",
          "one of the two");
    }
    boolean noneSeen = spot.mouldSeen().equals(Optional.of(MouldSeen.NONE));
    spot.mouldArea()
        .filter(area -> noneSeen && area.high() > 0)
        .ifPresent(
            area ->
                list.add(
                    SurveyCode.MOULD_CONTRADICTION,
                    path + ".mould_area",
                    area.written() + " although mould_seen is none",
                    "no area, or what was seen"));
  }
}
