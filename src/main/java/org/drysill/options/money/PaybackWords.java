package org.drysill.options.money;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.options.Payback;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.measures.OptionDefaults;

/** Puts a simple payback into honest words. */
record PaybackWords(OptionDefaults defaults) {
  private static final Citation SIMPLE =
      Citation.of("EN 15459-1", "2017", "simple payback", How.MEMORY);

  /** Payback against doing nothing. */
  Payback againstNothing(Figures figures, Optional<Range> first, Range running) {
    return of(
        figures, "payback_nothing", "doing nothing", first.map(Range::likely), -running.likely());
  }

  /**
   * A payback.
   *
   * @param extra first cost above that of the alternative; empty where it cannot be told
   * @param saving yearly saving against it; negative where it costs more
   */
  Payback of(Figures figures, String id, String against, Optional<Double> extra, double saving) {
    if (extra.isEmpty()) {
      return new Payback(
          Payback.Kind.NOT_TOLD,
          against,
          Optional.empty(),
          "Against " + against + " it cannot be told: a price is missing.");
    }
    if (extra.get() <= 0 && saving >= 0) {
      return new Payback(
          Payback.Kind.AT_ONCE,
          against,
          Optional.empty(),
          "Against " + against + " it costs no more at the start nor later.");
    }
    double years =
        org.drysill.physics.energy.Payback.years(extra.get(), saving)
            .orElse(Double.POSITIVE_INFINITY);
    return years <= defaults.longestPayback().likely()
        ? inYears(figures, id, against, years)
        : never(against, saving);
  }

  private Payback inYears(Figures figures, String id, String against, double years) {
    Figure figure =
        figures.of(
            id,
            "simple payback against " + against,
            Range.exactly(years),
            Unit.YEARS,
            "extra first cost / yearly saving",
            List.of(),
            List.of(SIMPLE));
    Range century = defaults.aboutACentury().range();
    String said =
        years >= century.low() && years <= century.high()
            ? "about a century"
            : years < 1 ? "less than a year" : Math.round(Math.ceil(years)) + " years";
    return new Payback(
        Payback.Kind.YEARS,
        against,
        Optional.of(figure),
        "Against " + against + " it pays for itself after " + said + ".");
  }

  private static Payback never(String against, double saving) {
    return new Payback(
        Payback.Kind.NEVER,
        against,
        Optional.empty(),
        saving > 0
            ? "Against " + against + " it never pays for itself in a lifetime of the building."
            : "Against " + against + " it never pays: it is not a measure that saves money.");
  }
}
