package org.drysill.assess.ventilation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.ventilation.adequacy.BackgroundFindings;
import org.drysill.assess.ventilation.adequacy.ContinuousTotal;
import org.drysill.assess.ventilation.adequacy.DoorPressures;
import org.drysill.assess.ventilation.adequacy.ExtractFindings;
import org.drysill.assess.ventilation.adequacy.FanPowerFindings;
import org.drysill.assess.ventilation.adequacy.PurgeFindings;
import org.drysill.assess.ventilation.adequacy.SupplyFindings;
import org.drysill.assess.ventilation.adequacy.TransferFindings;
import org.drysill.assess.ventilation.adequacy.WholeHome;
import org.drysill.assess.ventilation.airing.AiringStudy;
import org.drysill.assess.ventilation.provided.LoggedTurns;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.provided.Provision;
import org.drysill.assess.ventilation.required.Demand;
import org.drysill.assess.ventilation.required.Demands;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.assess.ventilation.rooms.RoomAirAssessor;
import org.drysill.assess.ventilation.rooms.RoomAirResult;
import org.drysill.reference.rules.RuleCatalogue;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Jurisdiction;

/** Finds out whether a home gets enough fresh air by the rule set that governs there. */
public final class VentilationAssessor {
  private VentilationAssessor() {}

  /**
   * Assesses a home.
   *
   * @param home the home
   * @param rules the rule sets; a user's own stands first, as {@link RuleCatalogue#with} puts it
   * @param defaults what is taken for granted where the survey does not say
   * @throws IllegalArgumentException where the survey names a rule set that is not there
   */
  public static VentilationResult assess(
      Home home, RuleCatalogue rules, VentilationDefaults defaults) {
    return assess(home, rules, defaults, Map.of());
  }

  /**
   * The same where cycles of alternating units were logged.
   *
   * @param home the home
   * @param rules every rule set
   * @param defaults what is taken for granted
   * @param turns what the logs show, by the survey's id of the fan
   */
  public static VentilationResult assess(
      Home home,
      RuleCatalogue rules,
      VentilationDefaults defaults,
      Map<String, LoggedTurns> turns) {
    RuleSet governing = governing(home.survey().dwelling().jurisdiction(), rules);
    RuleFacts facts = RuleFacts.of(home);
    Demand demand = Demands.of(governing.governing().rate(), facts);
    ProvidedAir air = Provision.of(home, defaults, turns);
    Comparisons comparisons = new Comparisons(home, facts, air);
    Optional<Figure> required = comparisons.required(governing, demand);
    RoomAirResult rooms = RoomAirAssessor.of(home, air, defaults);
    return new VentilationResult(
        governing,
        comparisons.asked(governing, demand, required),
        comparisons.all(governing, rules),
        RoomRules.of(home, governing, rules),
        Quoted.in(home, defaults),
        air,
        rooms,
        WholeHome.of(governing, demand, required, air),
        extract(governing, home, air, demand, required),
        SupplyFindings.of(governing, home, air, required, demand),
        BackgroundFindings.of(governing, home, air),
        PurgeFindings.ofHabitableRooms(governing, home),
        AiringStudy.of(home, defaults.airing()),
        TransferFindings.of(governing, home, defaults),
        DoorPressures.of(home, air, defaults),
        FanPowerFindings.of(governing, air),
        Stream.concat(air.assumptions().stream(), rooms.assumptions().stream()).toList());
  }

  private static RuleSet governing(Jurisdiction jurisdiction, RuleCatalogue rules) {
    return jurisdiction
        .rules()
        .map(
            id ->
                rules
                    .find(id)
                    .orElseThrow(() -> new IllegalArgumentException("no rule set named " + id)))
        .orElseGet(() -> rules.all().get(0));
  }

  private static List<Finding> extract(
      RuleSet rules, Home home, ProvidedAir air, Demand demand, Optional<Figure> required) {
    List<Finding> findings =
        new ArrayList<>(
            ExtractFindings.of(rules, home, air, PurgeFindings.ofWetRooms(rules, home)));
    ContinuousTotal.of(rules, air, required, demand).ifPresent(findings::add);
    return findings;
  }
}
