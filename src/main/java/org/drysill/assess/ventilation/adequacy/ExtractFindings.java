package org.drysill.assess.ventilation.adequacy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.RuleSet;
import org.drysill.survey.FanKind;
import org.drysill.survey.RunMode;

/** Each wet room's extract against what a rule set prints for it. */
public final class ExtractFindings {
  private final RuleSet rules;
  private final ProvidedAir air;
  private final List<PurgeOpening> purge;

  private ExtractFindings(RuleSet rules, ProvidedAir air, List<PurgeOpening> purge) {
    this.rules = rules;
    this.air = air;
    this.purge = purge;
  }

  /**
   * One finding for each wet room, and one for the continuous rate where a heat-recovery unit does
   * it.
   *
   * @param rules the governing rule set
   * @param home the home
   * @param air its fans
   * @param purge the openings of wet rooms for which openings will do instead
   */
  public static List<Finding> of(
      RuleSet rules, Home home, ProvidedAir air, List<PurgeOpening> purge) {
    ExtractFindings findings = new ExtractFindings(rules, air, purge);
    return home.rooms().stream()
        .filter(RoomFacts::wet)
        .flatMap(room -> findings.of(room).stream())
        .toList();
  }

  private List<Finding> of(RoomFacts room) {
    List<FanFlow> fans =
        air.fansIn(room.id()).stream().filter(f -> f.counting().extractShare() > 0).toList();
    List<FanFlow> always = fans.stream().filter(ExtractFindings::runsAlways).toList();
    List<FanFlow> sometimes = fans.stream().filter(f -> !runsAlways(f)).toList();
    if (fans.isEmpty()) {
      return List.of(NoExtract.of(rules, room, centralFan(), air.fansIn(room.id()), purge));
    }
    List<RoomExtract> ways = new ArrayList<>();
    if (!always.isEmpty()) {
      ways.add(new RoomExtract(room, ExtractMode.CONTINUOUS, always));
    }
    if (!sometimes.isEmpty()) {
      ways.add(new RoomExtract(room, ExtractMode.INTERMITTENT, sometimes));
    }
    List<Finding> findings = new ArrayList<>();
    findings.add(best(ways, room));
    if (!always.isEmpty()) {
      HeatRecoveryRate.of(rules, ways.get(0)).ifPresent(findings::add);
    }
    return findings;
  }

  /** Of two ways of extract in one room the better counts. */
  private Finding best(List<RoomExtract> ways, RoomFacts room) {
    List<FanFlow> nothing =
        air.fansIn(room.id()).stream()
            .filter(f -> f.counting() == FanFlow.Counting.NOTHING)
            .toList();
    return ways.stream()
        .map(way -> ExtractComparison.of(rules, way, nothing))
        .max(Comparator.comparingInt((Finding f) -> rank(f.verdict())))
        .orElseThrow();
  }

  private static int rank(Verdict verdict) {
    return switch (verdict) {
      case MEETS -> 2;
      case UNKNOWN -> 1;
      case SHORT -> 0;
    };
  }

  private static boolean runsAlways(FanFlow fan) {
    boolean made =
        switch (fan.fan().kind()) {
          case CONTINUOUS_EXTRACT,
              ALTERNATING_HEAT_RECOVERY,
              SIMULTANEOUS_HEAT_RECOVERY,
              BALANCED_HEAT_RECOVERY,
              PASSIVE_STACK ->
              true;
          case INTERMITTENT_EXTRACT,
              EXTRACT_HOOD,
              RECIRCULATING_HOOD,
              POSITIVE_INPUT,
              FITTED_BUT_NOT_WORKING ->
              false;
        };
    RunMode run = fan.fan().run().orElse(made ? RunMode.CONTINUOUS : RunMode.MANUAL);
    return made && (run == RunMode.CONTINUOUS || run == RunMode.HUMIDITY_CONTROLLED);
  }

  /** A fan for the whole home whose duct may end in a room where the survey lists no fan. */
  private Optional<FanFlow> centralFan() {
    return air.fans().stream()
        .filter(f -> f.fan().kind() == FanKind.BALANCED_HEAT_RECOVERY)
        .findFirst();
  }
}
