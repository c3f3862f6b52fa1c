package org.drysill.assess.ventilation.adequacy;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.required.Demand;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.reference.rules.Counts;
import org.drysill.reference.rules.RuleSet;

/** The outdoor air of the whole home against what the governing rule set asks. */
public final class WholeHome {
  private static final String ID = "ventilation.whole_home";

  private WholeHome() {}

  /**
   * Compares.
   *
   * @param rules the governing rule set
   * @param demand what it asks
   * @param required the same as a figure; empty where a fact is missing
   * @param air what the home gets
   */
  public static Finding of(
      RuleSet rules, Demand demand, Optional<Figure> required, ProvidedAir air) {
    Figure provided =
        rules.governing().counts() == Counts.ALL_OUTDOOR_AIR ? air.wholeHome() : air.byFans();
    return required
        .map(asked -> compare(rules, demand, asked, provided, air))
        .orElseGet(() -> notTold(rules, demand, provided));
  }

  private static Finding notTold(RuleSet rules, Demand demand, Figure provided) {
    String missing = String.join("; ", demand.missing());
    return new Finding(
        ID,
        "Whole home",
        Optional.empty(),
        Verdict.UNKNOWN,
        Direction.AT_LEAST,
        Optional.of(provided),
        Optional.empty(),
        rules.named() + " asks by a fact that the survey lacks: " + missing + ".",
        Optional.of("Add " + missing + "."),
        demand.sources());
  }

  private static Finding compare(
      RuleSet rules, Demand demand, Figure asked, Figure provided, ProvidedAir air) {
    Verdict verdict =
        Asked.sure(Verdict.atLeast(provided.value(), asked.value()), demand.confidence());
    return new Finding(
        ID,
        "Whole home",
        Optional.empty(),
        verdict,
        Direction.AT_LEAST,
        Optional.of(provided),
        Optional.of(asked),
        because(verdict, rules, demand, asked, provided),
        verdict == Verdict.UNKNOWN ? Optional.of(settle(demand, air)) : Optional.empty(),
        demand.sources());
  }

  private static String because(
      Verdict verdict, RuleSet rules, Demand demand, Figure asked, Figure provided) {
    FlowText text = new FlowText(rules.units());
    String need = text.required(asked.value().high());
    String has = text.provided(provided.value());
    String what =
        rules.governing().counts() == Counts.ALL_OUTDOOR_AIR
            ? "fans and leaks together"
            : "fans alone, as the rule counts";
    String by = demand.governedBy().isEmpty() ? "" : " by " + demand.governedBy();
    return switch (verdict) {
      case MEETS ->
          "Even the least that "
              + what
              + " bring, of "
              + has
              + ", reaches the "
              + need
              + " asked"
              + by
              + ".";
      case SHORT ->
          "Even the most that "
              + what
              + " bring, of "
              + has
              + ", is at least "
              + text.required(asked.value().low() - provided.value().high())
              + " short of the "
              + need
              + " asked"
              + by
              + "."
              + standing(rules);
      case UNKNOWN ->
          text.provided(provided.value(), asked.value().high())
              + " come by "
              + what
              + "; "
              + need
              + " is asked"
              + by
              + ", which lies within what is not known.";
    };
  }

  private static String standing(RuleSet rules) {
    return rules.existingHomes().isPresent()
        ? " For a home that stands this is not by itself a breach."
        : "";
  }

  /** The reading that narrows the result most: at the widest of its parts. */
  private static String settle(Demand demand, ProvidedAir air) {
    if (Asked.doubtful(demand.confidence())) {
      return Asked.lookUp(demand.sources().get(0));
    }
    Stream<Part> leaks =
        Stream.of(
            new Part(width(air.leaks()), "Have the air leakage measured by a pressure test."),
            new Part(
                width(air.ventilators()),
                "Look at every background ventilator, note its equivalent area, and whether it is"
                    + " kept open."));
    return Stream.concat(leaks, air.fans().stream().map(WholeHome::part))
        .max(Comparator.comparingDouble(Part::width))
        .orElseThrow()
        .instruction();
  }

  private record Part(double width, String instruction) {}

  private static Part part(FanFlow fan) {
    double width = Math.max(width(fan.supply()), width(fan.extract()));
    boolean byFlow = relative(fan.running()) >= relative(fan.shareOfDay());
    return new Part(
        width,
        byFlow
            ? "Measure the flow at " + fan.name() + " with a flow hood while it runs."
            : "Find out how many hours a day " + fan.name() + " runs.");
  }

  private static double width(Figure figure) {
    return figure.value().high() - figure.value().low();
  }

  private static double relative(Figure figure) {
    return figure.likely() > 0 ? width(figure) / figure.likely() : 0;
  }
}
