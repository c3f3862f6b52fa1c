package org.drysill.options.rank;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Verdict;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.money.Costed;

/**
 * A measure as the ranking sees it.
 *
 * @param costed its effect and money
 * @param cautions the cautions that belong to it, the gravest first
 * @param admissible whether it can be done without a safety test first
 */
public record Entry(Costed costed, List<ShownCaution> cautions, boolean admissible) {
  /** Copies the list. */
  public Entry {
    cautions = List.copyOf(cautions);
  }

  /** 0 to 4: how surely air suffices and walls stay free of mould risk with it. */
  int targets() {
    return points(costed.studied().effect().enoughAir())
        + points(costed.studied().effect().opaqueSafe());
  }

  /** How far it goes towards both, in steps. */
  long progress(double step) {
    double way = (costed.studied().shortfallClosed() + costed.studied().opaqueMonthsClosed()) / 2;
    return (long) Math.floor(way / step + 1e-9);
  }

  double wetGlassMonths() {
    return costed.studied().effect().wetGlassMonths().map(Figure::likely).orElse(0.0);
  }

  double annualCost() {
    return costed.annualCost().orElse(Double.POSITIVE_INFINITY);
  }

  double firstCost() {
    return costed.firstCost().orElse(Double.POSITIVE_INFINITY);
  }

  private static int points(Verdict verdict) {
    return switch (verdict) {
      case MEETS -> 2;
      case UNKNOWN -> 1;
      case SHORT -> 0;
    };
  }
}
