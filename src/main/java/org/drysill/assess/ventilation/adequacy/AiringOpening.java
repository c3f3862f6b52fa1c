package org.drysill.assess.ventilation.adequacy;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.rules.OpeningClass;
import org.drysill.reference.rules.PurgeRule;
import org.drysill.reference.rules.PurgeShare;
import org.drysill.survey.Opening;
import org.drysill.survey.OpeningKind;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/**
 * A window as an opening for airing.
 *
 * @param window the window
 * @param rule what the rule set prints
 */
record AiringOpening(Window window, PurgeRule rule) {

  /** True where the survey says all that the rule asks about: how it opens, how far, how large. */
  boolean known() {
    return window
        .opening()
        .map(
            o ->
                classOf(o).isEmpty()
                    || (area().isPresent()
                        && (o.angle().isPresent() || classOf(o).get() != OpeningClass.HINGED)))
        .orElse(false);
  }

  /** Clear area of the opening [m²]; empty where it is not known or does not open. */
  Optional<Range> area() {
    return window
        .opening()
        .filter(o -> classOf(o).isPresent())
        .flatMap(o -> o.width().flatMap(w -> o.height().map(h -> w.range().times(h.range()))));
  }

  /** The row that holds for it; empty where its angle is not known or none holds. */
  Optional<PurgeShare> row() {
    return window
        .opening()
        .flatMap(
            o ->
                classOf(o)
                    .flatMap(
                        kind ->
                            degrees(o)
                                .flatMap(
                                    angle ->
                                        rule.openings().stream()
                                            .filter(row -> row.holdsFor(kind, angle))
                                            .findFirst())));
  }

  /**
   * Its area as it counts [m²] where openings of the least share are asked: twice the share counts
   * half; one that does not open wide enough counts nothing.
   */
  Range counted(double leastShare) {
    return row()
        .flatMap(PurgeShare::share)
        .flatMap(share -> area().map(a -> a.times(leastShare / share.value())))
        .orElse(Range.exactly(0));
  }

  /** The opening angle [°]; openings without hinge count as fully open. */
  static Optional<Double> degrees(Opening opening) {
    boolean hinged = classOf(opening).filter(kind -> kind == OpeningClass.HINGED).isPresent();
    return hinged ? opening.angle().map(Quantity::low) : Optional.of(90.0);
  }

  private static Optional<OpeningClass> classOf(Opening opening) {
    return classOf(opening.kind());
  }

  private static Optional<OpeningClass> classOf(OpeningKind kind) {
    return switch (kind) {
      case SIDE_HUNG, TOP_HUNG, BOTTOM_HUNG, PIVOT -> Optional.of(OpeningClass.HINGED);
      case SASH -> Optional.of(OpeningClass.SLIDING);
      case DOOR -> Optional.of(OpeningClass.EXTERNAL_DOOR);
      case FIXED -> Optional.empty();
    };
  }
}
