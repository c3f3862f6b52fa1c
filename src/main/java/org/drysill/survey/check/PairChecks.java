package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.survey.Survey;

/** Units that alternate in pairs name each other, and both can alternate. */
final class PairChecks {
  private PairChecks() {}

  static void check(Survey survey, CheckList list) {
    Map<String, Fan> fans = new LinkedHashMap<>();
    survey.rooms().forEach(room -> room.fans().forEach(fan -> fans.put(fan.id(), fan)));
    each(
        survey.rooms(),
        "rooms",
        (room, path) ->
            each(
                room.fans(),
                path + ".fans",
                (fan, at) ->
                    fan.pairedWith()
                        .ifPresent(other -> pair(fan, other, fans, at + ".paired_with", list))));
  }

  private static void pair(
      Fan fan, String other, Map<String, Fan> fans, String key, CheckList list) {
    Fan partner = fans.get(other);
    if (partner == null) {
      list.addUnknownId(SurveyCode.NO_SUCH_FAN, key, other, fans.keySet(), "another fan");
      return;
    }
    wrong(fan, partner)
        .ifPresent(
            expected -> list.add(SurveyCode.WRONG_PAIR, key, CheckList.quote(other), expected));
  }

  /** What would be right; empty where the pair is. */
  private static Optional<String> wrong(Fan fan, Fan partner) {
    if (partner.id().equals(fan.id())) {
      return Optional.of("the id of another fan");
    }
    if (fan.kind() != FanKind.ALTERNATING_HEAT_RECOVERY
        || partner.kind() != FanKind.ALTERNATING_HEAT_RECOVERY) {
      return Optional.of("two fans of the kind " + FanKind.ALTERNATING_HEAT_RECOVERY.word());
    }
    if (!partner.pairedWith().equals(Optional.of(fan.id()))) {
      return Optional.of(
          "a pair that names each other: " + partner.id() + " has no paired_with: " + fan.id());
    }
    return Optional.empty();
  }
}
