package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Assessment;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.options.HourlySpread;
import org.drysill.options.rank.Purse;
import org.drysill.physics.Range;

/**
 * Why a package stands where it does, in sentences with figures.
 *
 * @param assessment the home
 * @param sure in which order packages stand
 * @param surest the best chance of all that stand in that order [1]
 * @param hourly what packages do hour by hour
 * @param purse the money at hand
 */
record PackReasons(
    Assessment assessment,
    SureOrder sure,
    double surest,
    Function<PackValue, HourlySpread> hourly,
    Purse purse) {
  /** What it does, what decides against it beside the best one, and what it leaves. */
  List<String> of(PackValue value, Optional<PackValue> best) {
    List<String> reasons = new ArrayList<>();
    reasons.add(does(value));
    reasons.add(
        "With all that is not known for sure it has enough air and no month at risk of mould in "
            + cases(value)
            + " of 100 cases"
            + hourByHour(value)
            + ".");
    best.ifPresent(b -> reasons.add(beside(value, b)));
    glass(value).ifPresent(reasons::add);
    return reasons;
  }

  /** Where it is another number of cases than by month, by more than a step. */
  private String hourByHour(PackValue value) {
    double share = hourly.apply(value).enough().share();
    return Math.abs(share - sure.chance(value)) > sure.step()
        ? ", judged by the means of months; followed hour by hour in "
            + Math.round(100 * share)
            + " of 100"
        : "";
  }

  private Optional<String> glass(PackValue value) {
    Range mornings = hourly.apply(value).wetMornings();
    if (value.wet() == 0 && mornings.likely() == 0) {
      return Optional.empty();
    }
    String months =
        "It leaves "
            + months(value.wet())
            + " with wet glass, summed over windows, and the wettest";
    return Optional.of(
        Math.round(mornings.likely()) == 0
            ? months + " window is likely wet on no morning of the year."
            : months
                + " window is seen to be wet on "
                + mornings(Math.round(mornings.likely()))
                + " a year"
                + between(mornings)
                + ".");
  }

  private static String mornings(long number) {
    return number + (number == 1 ? " morning" : " mornings");
  }

  private static String between(Range mornings) {
    return mornings.isSpread()
        ? " ("
            + Math.round(mornings.low())
            + " to "
            + Math.round(mornings.high())
            + " in nine of ten cases)"
        : "";
  }

  private String does(PackValue value) {
    List<String> parts = new ArrayList<>();
    if (order().mouldToday() > 0) {
      parts.add(
          value.mould() == 0
              ? "it ends all " + months(order().mouldToday()) + " at risk of mould"
              : "it ends "
                  + (order().mouldToday() - value.mould())
                  + " of the "
                  + months(order().mouldToday())
                  + " at risk of mould");
    }
    if (order().lacksToday() > 0) {
      FlowText flows = new FlowText(assessment.ventilation().rules().units());
      parts.add(
          value.lacks() <= 0
              ? "it brings all the air that is lacking"
              : "of the air that is asked " + flows.required(value.lacks()) + " are still lacking");
    }
    String words = String.join("; ", parts);
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  private String beside(PackValue value, PackValue best) {
    boolean needsTest = best.safe() && !value.safe();
    if (sure.chance(best) < sure.enough(sure.chance(value))) {
      return "It is surer than A, which has both in "
          + cases(best)
          + " of 100 cases"
          + (needsTest ? ", but needs a safety test first." : ".");
    }
    if (needsTest) {
      return "It needs a safety test first, and A does not.";
    }
    if (sure.chance(value) < sure.enough(sure.chance(best))) {
      return "A has both in " + cases(best) + " of 100 cases.";
    }
    if (sure.chance(value) < sure.enough(surest)) {
      return notSureEnough(value.bill().annual() - best.bill().annual());
    }
    if (sure.enough(sure.chance(best)) <= 0 && order().steps(value) != order().steps(best)) {
      return "It likely closes " + percent(value) + " of what is lacking, A " + percent(best) + ".";
    }
    if (value.stopGap() && !best.stopGap()) {
      return "Part of it is a stop-gap, which helps while it is used.";
    }
    return "It goes about as far as A and costs "
        + money(value.bill().annual() - best.bill().annual())
        + " a year, all in all.";
  }

  /** A is sure enough and this one, a little less sure, is not: what it costs comes after that. */
  private String notSureEnough(double more) {
    return "It costs "
        + money(more)
        + " a year, all in all, but is not sure enough to go before A: that takes "
        + sure.casesEnough(surest)
        + " of 100 cases here, the surest package has both in "
        + Math.round(100 * surest)
        + ".";
  }

  private String money(double more) {
    return purse.words(Math.abs(more)).equals(purse.words(0))
        ? "as much"
        : purse.words(Math.abs(more)) + (more < 0 ? " less" : " more");
  }

  private PackOrder order() {
    return sure.order();
  }

  private long cases(PackValue value) {
    return Math.round(100 * sure.chance(value));
  }

  private String percent(PackValue value) {
    return Math.round(100 * order().progress(value)) + " %";
  }

  private static String months(int number) {
    return number + (number == 1 ? " month" : " months");
  }
}
