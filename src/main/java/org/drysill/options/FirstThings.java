package org.drysill.options;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.money.Costed;
import org.drysill.options.site.Candidate;
import org.drysill.reference.cautions.Trigger;

/**
 * What comes before every measure: unsafe appliances, then causes that no fan cures, then what is
 * there and does not work.
 */
record FirstThings(Assessment assessment, OptionsBasis basis) {

  /**
   * All of them.
   *
   * @param causes water from elsewhere
   * @param defects fans and ducts to be mended, with what that does and costs
   */
  List<FirstThing> of(List<Candidate> causes, List<Costed> defects) {
    return Stream.of(
            assessment.cautions().shown().stream()
                .filter(c -> unsafe(c.caution().trigger()))
                .map(FirstThings::appliance),
            causes.stream().map(this::cause),
            defects.stream().map(this::defect))
        .flatMap(s -> s)
        .toList();
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
        List.of(caution.id()),
        Optional.empty(),
        Optional.empty());
  }

  private FirstThing cause(Candidate cause) {
    return new FirstThing(
        cause.measure().id(),
        cause.measure().title(),
        String.join(" ", cause.because()),
        cause.rooms().stream().map(RoomFacts::id).toList(),
        cautions(cause),
        Optional.empty(),
        Optional.empty());
  }

  private FirstThing defect(Costed defect) {
    Candidate candidate = defect.studied().candidate();
    return new FirstThing(
        candidate.id(),
        candidate.title(),
        String.join(" ", candidate.because()),
        candidate.rooms().stream().map(RoomFacts::id).toList(),
        cautions(candidate),
        Optional.of(defect.studied().effect()),
        Optional.of(defect.money()));
  }

  private List<String> cautions(Candidate candidate) {
    return basis
        .cautions()
        .ofWork(candidate.measure().cautions(), assessment.home(), candidate.rooms())
        .stream()
        .map(ShownCaution::id)
        .toList();
  }
}
