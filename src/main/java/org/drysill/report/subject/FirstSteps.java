package org.drysill.report.subject;

import java.util.Optional;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.FirstThing;
import org.drysill.report.words.Words;

/** The words of what comes before every measure. */
public final class FirstSteps {
  private FirstSteps() {}

  /** The hazard, where the step is what a caution asks for, and why here. */
  public static String why(Desk desk, FirstThing thing) {
    String because = Words.sentence(Words.shortened(thing.because(), 230));
    return caution(desk, thing)
        .map(c -> Words.sentence(c.caution().hazard()) + " " + because)
        .orElse(because);
  }

  /** The caution that asks for just this step. */
  public static Optional<ShownCaution> caution(Desk desk, FirstThing thing) {
    return thing.cautions().stream()
        .flatMap(id -> desk.subject().cautions().caution(id).stream())
        .filter(c -> c.caution().ask().equals(thing.title()))
        .findFirst();
  }
}
