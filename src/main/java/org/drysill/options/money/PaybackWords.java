package org.drysill.options.money;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.MoneyText;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.options.Payback;
import org.drysill.options.Payback.Kind;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.measures.OptionDefaults;

/**
 * Puts a simple payback into honest words: never where nothing is saved, and where the years go on
 * long after the thing itself has worn out, that too.
 *
 * @param defaults from when on a payback is called about a century, and never
 * @param currency the currency of the survey
 */
record PaybackWords(OptionDefaults defaults, String currency) {
  private static final Citation SIMPLE =
      Citation.of("EN 15459-1", "2017", "simple payback", How.MEMORY);

  /** Payback against doing nothing. */
  Payback againstNothing(Figures figures, Optional<Range> first, Range running, int lifeYears) {
    String against = "doing nothing";
    return first
        .map(f -> of(figures, "payback_nothing", against, f, running.times(-1), lifeYears))
        .orElseGet(() -> notTold(against));
  }

  /** A payback that cannot be told for want of a price. */
  Payback notTold(String against) {
    return told(Kind.NOT_TOLD, against, "it cannot be told: a price is missing.");
  }

  /** For the cheapest of all that deliver the same air. */
  Payback cheapest() {
    return new Payback(
        Kind.CHEAPEST,
        "the same air",
        Optional.empty(),
        "No other measure studied here brings as much air for less a year.");
  }

  /**
   * A payback.
   *
   * @param extra first cost above that of the alternative
   * @param saving yearly saving against it; negative where it costs more
   * @param lifeYears how long the measure lasts
   */
  Payback of(Figures figures, String id, String against, Range extra, Range saving, int lifeYears) {
    double more = extra.likely();
    double saved = saving.likely();
    if (more <= 0) {
      return saved >= 0
          ? told(Kind.AT_ONCE, against, "it costs no more at the start nor later.")
          : told(Kind.NEVER, against, dearerLater(more, -saved));
    }
    double years = years(more, saved);
    return years <= defaults.longestPayback().likely()
        ? inYears(
            figures,
            id,
            against,
            new Range(best(extra, saving, years), years, years),
            worst(extra, saving),
            lifeYears,
            List.of(
                Input.of("ΔCI", "extra first cost", extra, Unit.MONEY, Basis.CALCULATED),
                Input.of("s", "yearly saving", saving, Unit.MONEY_PER_YEAR, Basis.CALCULATED)))
        : told(Kind.NEVER, against, never(more, saved));
  }

  private static double years(double extra, double saving) {
    return org.drysill.physics.energy.Payback.years(extra, saving).orElse(Double.POSITIVE_INFINITY);
  }

  private static double best(Range extra, Range saving, double likely) {
    return Math.min(likely, years(extra.low(), saving.high()));
  }

  private double worst(Range extra, Range saving) {
    double years = years(extra.high(), saving.low());
    return years <= defaults.longestPayback().likely() ? years : Double.POSITIVE_INFINITY;
  }

  private Payback inYears(
      Figures figures,
      String id,
      String against,
      Range bestToLikely,
      double worst,
      int life,
      List<Input> inputs) {
    double likely = bestToLikely.likely();
    Range years = new Range(bestToLikely.low(), likely, Double.isFinite(worst) ? worst : likely);
    Figure figure =
        figures.of(
            id,
            "simple payback against " + against,
            years,
            Unit.YEARS,
            "ΔCI / s",
            inputs,
            List.of(SIMPLE));
    String words =
        "Against "
            + against
            + " it pays for itself after "
            + after(likely)
            + between(years, worst)
            + (likely > life
                ? ", but it lasts about " + life + " years: in its own life, never."
                : ".");
    return new Payback(Kind.YEARS, against, Optional.of(figure), words);
  }

  private String after(double years) {
    Range century = defaults.aboutACentury().range();
    if (years >= century.low() && years <= century.high()) {
      return "about a century";
    }
    if (years < 1) {
      return "less than a year";
    }
    return years == 1 ? "a year" : whole(Math.ceil(years)) + " years";
  }

  private static String between(Range years, double worst) {
    if (Double.isInfinite(worst)) {
      return " (at best " + whole(years.low()) + ", at worst never)";
    }
    return years.isSpread()
        ? " (" + whole(years.low()) + " to " + whole(Math.ceil(years.high())) + ")"
        : "";
  }

  private String dearerLater(double more, double yearly) {
    return (more < 0 ? "it costs " + money(-more) + " less at the start but " : "it costs ")
        + money(yearly)
        + " more every year: it is not a measure that saves money.";
  }

  private String never(double more, double saved) {
    if (saved > 0) {
      return "it never pays for itself: "
          + money(more)
          + " to save "
          + money(saved)
          + " a year outlasts the building.";
    }
    return saved == 0
        ? "it never pays: it saves no money."
        : "it never pays: it costs " + money(-saved) + " more every year and does not save money.";
  }

  private String money(double amount) {
    MoneyText text = new MoneyText(currency);
    return amount < 1 ? "less than " + text.whole(1) : text.whole(amount);
  }

  private static String whole(double number) {
    return String.format(Locale.ROOT, "%,d", Math.round(number));
  }

  private static Payback told(Kind kind, String against, String words) {
    return new Payback(kind, against, Optional.empty(), "Against " + against + " " + words);
  }
}
