package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.required.Demand;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Range;
import org.drysill.reference.rules.RuleSet;

/**
 * All continuous extract of a home together against the whole-home rate; for homes that are
 * ventilated by continuous extract.
 */
public final class ContinuousTotal {
  private ContinuousTotal() {}

  /**
   * Compares; empty where the home is not ventilated so.
   *
   * @param rules the governing rule set
   * @param air what the home gets
   * @param wholeHome the whole-home rate; empty where a fact is missing
   * @param demand where it comes from
   */
  public static Optional<Finding> of(
      RuleSet rules, ProvidedAir air, Optional<Figure> wholeHome, Demand demand) {
    List<FanFlow> fans = air.fans().stream().filter(Strategies::isContinuousExtract).toList();
    return fans.isEmpty() ? Optional.empty() : wholeHome.map(q -> of(rules, fans, q, demand));
  }

  private static Finding of(RuleSet rules, List<FanFlow> fans, Figure asked, Demand demand) {
    Range flow =
        fans.stream().map(FanFlow::extractWhileRunning).reduce(Range.exactly(0), Range::plus);
    boolean unstated = fans.stream().anyMatch(fan -> !fan.stated());
    Verdict compared = unstated ? Verdict.UNKNOWN : Verdict.atLeast(flow, asked.value());
    Verdict verdict = Asked.sure(compared, demand.confidence());
    FlowText text = new FlowText(rules.units());
    return new Finding(
        "ventilation.extract.total",
        "Continuous extract together",
        Optional.empty(),
        verdict,
        Direction.AT_LEAST,
        Optional.of(
            Asked.computed(
                "ventilation.extract.total.provided",
                "continuous extract together",
                flow,
                Unit.AIRFLOW,
                "q = Σ q_running",
                fans.stream().map(f -> Input.of("q_running", f.running())).toList(),
                List.of())),
        Optional.of(asked),
        "All continuous extract together takes out "
            + text.provided(flow)
            + "; it should reach the whole-home rate of "
            + text.required(asked.value().high())
            + ".",
        verdict == Verdict.UNKNOWN ? Optional.of(settle(demand)) : Optional.empty(),
        demand.sources());
  }

  private static String settle(Demand demand) {
    return Asked.doubtful(demand.confidence())
        ? Asked.lookUp(demand.sources().get(0))
        : "Measure the flow at each continuous extract fan at its usual setting.";
  }
}
