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
   * @param causes water from elsewhere whose amount is not known
   * @param defects what is mended, with what that does and costs
   */
  List<FirstThing> of(List<Candidate> causes, List<Costed> defects) {
    List<ShownCaution> unsafe =
        assessment.cautions().shown().stream().filter(c -> unsafe(c.caution().trigger())).toList();
    List<Costed> apart =
        defects.stream().filter(d -> unsafe.stream().noneMatch(c -> ends(d, c))).toList();
    return Stream.of(
            unsafe.stream().map(c -> appliance(c, defects)),
            apart.stream().filter(FirstThings::endsSources).map(this::defect),
            causes.stream().map(this::cause),
            apart.stream().filter(d -> !endsSources(d)).map(this::defect))
        .flatMap(s -> s)
        .toList();
  }

  static boolean unsafe(Trigger trigger) {
    return trigger == Trigger.OPEN_FLUE_WITH_EXTRACT
        || trigger == Trigger.OPEN_FLUE
        || trigger == Trigger.UNFLUED_HEATER;
  }

  private static boolean endsSources(Costed defect) {
    return defect.studied().candidate().measure().endsSources();
  }

  /** True where mending it is what a caution about an unsafe appliance asks for. */
  private static boolean ends(Costed defect, ShownCaution caution) {
    return endsSources(defect)
        && caution.caution().trigger() == Trigger.UNFLUED_HEATER
        && defect.studied().candidate().measure().cautions().contains(caution.id());
  }

  private static FirstThing appliance(ShownCaution caution, List<Costed> defects) {
    Optional<Costed> replaced = defects.stream().filter(d -> ends(d, caution)).findFirst();
    return new FirstThing(
        caution.id(),
        caution.caution().ask(),
        caution.because(),
        caution.rooms(),
        List.of(caution.id()),
        replaced.map(r -> r.studied().effect()),
        replaced.map(Costed::money));
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
