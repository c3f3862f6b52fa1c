package org.drysill.benchmark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drysill.physics.tracer.AirChangeEvidence;
import org.drysill.physics.tracer.AirChangeEvidence.FromTracer;
import org.drysill.physics.tracer.AirChangeEvidence.FromVapour;
import org.drysill.physics.tracer.Decay;
import org.drysill.physics.tracer.Decays;
import org.drysill.physics.tracer.Rejection;
import org.drysill.physics.tracer.Substance;
import org.drysill.reference.logs.LogRules;
import org.drysill.truth.RoomLog;
import org.drysill.truth.RoomTruth;

/**
 * How well decays in logs tell the air change of made-up rooms in which it is known: how often the
 * stated interval holds it, how wide the interval is, how far off its middle, how often there is no
 * answer. DEVELOPERS.md has the command; its arguments are the number of rooms and of days.
 */
public final class AirChangeExperiment {
  private static final LogRules RULES = LogRules.bundled();

  private AirChangeExperiment() {}

  /**
   * What came of many rooms. All shares are 0 to 1.
   *
   * @param rooms how many
   * @param answered rooms with an accepted decay
   * @param bounded share of the answers whose lower end holds the truth
   * @param covered share of the answers whose both ends hold the truth
   * @param medianHalfWidth median half width of the intervals over the truth
   * @param medianBias median of (estimate − truth) / truth; of vapour, that of the lower end
   * @param rejections falls that were rejected, by reason
   */
  public record Outcome(
      int rooms,
      int answered,
      double bounded,
      double covered,
      double medianHalfWidth,
      double medianBias,
      Map<Rejection, Integer> rejections) {}

  public static void main(String[] arguments) {
    int rooms = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
    int days = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 14;
    System.out.printf(
        Locale.ROOT, "%d rooms, %d days each; all but the first in %%%n", rooms, days);
    System.out.printf(
        Locale.ROOT,
        "%-8s%12s%14s%12s%12s%8s%n",
        "",
        "no answer",
        "bound holds",
        "covered",
        "half width",
        "bias");
    print("CO2", co2(rooms, days));
    print("vapour", vapour(rooms, days));
  }

  private static void print(String name, Outcome outcome) {
    System.out.printf(
        Locale.ROOT,
        "%-8s%12.1f%14.1f%12.1f%12.1f%8.1f%n        rejected: %s%n",
        name,
        100 - 100.0 * outcome.answered() / outcome.rooms(),
        100 * outcome.bounded(),
        100 * outcome.covered(),
        100 * outcome.medianHalfWidth(),
        100 * outcome.medianBias(),
        outcome.rejections());
  }

  /** From CO₂: n with its interval. */
  public static Outcome co2(int rooms, int days) {
    Tally tally = new Tally();
    for (int seed = 1; seed <= rooms; seed++) {
      RoomTruth truth = RoomTruth.of(seed);
      tally.add(
          truth.airChangePerHour(),
          Decays.find(
              RoomLog.of(truth, days).co2(),
              RoomLog.CO2_ERRORS,
              new Substance.Inert(),
              RULES.decays().ofCo2()));
    }
    return tally.outcome(rooms);
  }

  /** From vapour: two bounds. */
  public static Outcome vapour(int rooms, int days) {
    Tally tally = new Tally();
    for (int seed = 1; seed <= rooms; seed++) {
      RoomTruth truth = RoomTruth.of(seed);
      tally.add(
          truth.airChangePerHour(),
          Decays.find(
              RoomLog.of(truth, days).vapour(),
              RoomLog.VAPOUR_ERRORS,
              RULES.vapour(),
              RULES.decays().ofVapour()));
    }
    return tally.outcome(rooms);
  }

  /** An answer over the truth. */
  private record Answer(double low, double estimate, double high) {
    static Answer of(AirChangeEvidence evidence, double truth) {
      if (evidence instanceof FromTracer tracer) {
        return new Answer(
            tracer.perHour().low() / truth,
            tracer.perHour().likely() / truth,
            tracer.perHour().high() / truth);
      }
      FromVapour vapour = (FromVapour) evidence;
      double low = vapour.atLeastPerHour() / truth;
      return new Answer(low, low, vapour.hardlyAbovePerHour() / truth);
    }

    boolean bounds() {
      return low <= 1;
    }

    boolean covers() {
      return bounds() && high >= 1;
    }
  }

  /** Answers as they come in. */
  private static final class Tally {
    private final List<Answer> answers = new ArrayList<>();
    private final Map<Rejection, Integer> rejections = new EnumMap<>(Rejection.class);

    void add(double truth, Decays decays) {
      for (Decay.Rejected rejected : decays.rejected()) {
        rejections.merge(rejected.reason(), 1, Integer::sum);
      }
      decays
          .airChange(RULES.confidence().confidence())
          .ifPresent(evidence -> answers.add(Answer.of(evidence, truth)));
    }

    Outcome outcome(int rooms) {
      double count = answers.size();
      return new Outcome(
          rooms,
          answers.size(),
          answers.stream().filter(Answer::bounds).count() / count,
          answers.stream().filter(Answer::covers).count() / count,
          median(answers.stream().mapToDouble(a -> (a.high() - a.low()) / 2).sorted().toArray()),
          median(answers.stream().mapToDouble(a -> a.estimate() - 1).sorted().toArray()),
          rejections);
    }

    private static double median(double[] sorted) {
      return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
    }
  }
}
