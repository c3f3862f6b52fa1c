package org.drysill.options;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.site.Candidate;
import org.drysill.reference.cautions.Trigger;

/** What comes before every measure: unsafe appliances, then causes that no fan cures. */
final class FirstThings {
  private FirstThings() {}

  static List<FirstThing> of(Assessment assessment, List<Candidate> causes) {
    List<FirstThing> first = new ArrayList<>();
    for (ShownCaution caution : assessment.cautions().shown()) {
      if (unsafe(caution.caution().trigger())) {
        first.add(appliance(caution));
      }
    }
    causes.forEach(c -> first.add(cause(c)));
    return first;
  }

  static boolean unsafe(Trigger trigger) {
    return trigger == Trigger.OPEN_FLUE_WITH_EXTRACT
        || trigger == Trigger.OPEN_FLUE
        || trigger == Trigger.UNFLUED_HEATER;
  }

  private static FirstThing appliance(ShownCaution caution) {
    return new FirstThing(
        caution.id(),
        caution.caution().ask(),
        caution.because(),
        caution.rooms(),
        List.of(caution.id()));
  }

  private static FirstThing cause(Candidate cause) {
    return new FirstThing(
        cause.measure().id(),
        cause.measure().title(),
        String.join(" ", cause.because()),
        cause.rooms().stream().map(RoomFacts::id).toList(),
        cause.measure().cautions());
  }
}
