package org.drysill.report.chapter;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.FirstThing;
import org.drysill.report.block.Step;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** What comes before every measure. A step that a caution asks for is not repeated as a caution. */
public final class FirstSteps {
  private static final int REASON = 230;

  private FirstSteps() {}

  /** The steps, each caution beside the first that it belongs to, unless a step asks for it. */
  static List<Step> steps(Desk desk, List<FirstThing> things) {
    Set<String> shown = new HashSet<>();
    things.forEach(thing -> caution(desk, thing).map(ShownCaution::id).ifPresent(shown::add));
    return things.stream().map(thing -> step(desk, thing, shown)).toList();
  }

  private static Step step(Desk desk, FirstThing thing, Set<String> shown) {
    return new Step(
        List.of(),
        "",
        Words.sentence(thing.title()),
        why(desk, thing),
        List.of(),
        caution(desk, thing).isPresent()
            ? List.of()
            : MeasureStep.cautions(desk, thing.cautions().stream().filter(shown::add).toList()));
  }

  /** The hazard, where the step is what a caution asks for, and why here. */
  public static String why(Desk desk, FirstThing thing) {
    String because = Words.sentence(Words.shortened(thing.because(), REASON));
    return caution(desk, thing)
        .map(c -> Words.sentence(c.caution().hazard()) + " " + because)
        .orElse(because);
  }

  private static Optional<ShownCaution> caution(Desk desk, FirstThing thing) {
    return thing.cautions().stream()
        .flatMap(id -> desk.subject().cautions().caution(id).stream())
        .filter(c -> c.caution().ask().equals(thing.title()))
        .findFirst();
  }
}
