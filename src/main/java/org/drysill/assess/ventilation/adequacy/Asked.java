package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.rules.Confidence;

/** Figures that a document prints, and what may be concluded from them. */
final class Asked {
  private Asked() {}

  /** A printed value, as such. */
  static Figure printed(String id, String name, double value, Unit unit, Citation source) {
    return new Figure(
        id,
        name,
        Range.exactly(value),
        unit,
        Basis.PUBLISHED,
        () -> new Working("as printed", List.of(), List.of(source), Optional.empty()));
  }

  /** A value that follows from printed ones. */
  static Figure computed(
      String id,
      String name,
      Range value,
      Unit unit,
      String formula,
      List<Input> inputs,
      List<Citation> sources) {
    return new Figure(
        id,
        name,
        value,
        unit,
        Basis.CALCULATED,
        () -> new Working(formula, inputs, sources, Optional.empty()));
  }

  /** A verdict that rests on a doubtful remembered figure is none. */
  static Verdict sure(Verdict verdict, Optional<Confidence> confidence) {
    return doubtful(confidence) ? Verdict.UNKNOWN : verdict;
  }

  static boolean doubtful(Optional<Confidence> confidence) {
    return confidence.filter(c -> c == Confidence.LOW).isPresent();
  }

  /** What settles a verdict that a doubtful figure withholds. */
  static String lookUp(Citation source) {
    return "Look the figure up in " + source.text() + "; it is remembered here, and doubtful.";
  }

  /** With a capital, to begin a sentence or a heading. */
  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
