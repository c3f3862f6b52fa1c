package org.drysill.assess.ventilation;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.home.HomeBuilder;
import org.drysill.physics.Airflow;
import org.drysill.reference.dwelling.DwellingDefaults;
import org.drysill.reference.prices.MoneyDefaults;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.reference.rules.RuleCatalogue;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.RuleSets;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Survey;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Reading;

/** Assessments of homes that are written as a surveyor would, through everything in between. */
public final class VentilationFixtures {
  /** The bundled rule sets, read once. */
  public static final RuleCatalogue RULES = RuleCatalogue.bundled();

  /** The bundled defaults, read once. */
  public static final VentilationDefaults DEFAULTS = VentilationDefaults.bundled();

  private static final DwellingDefaults DWELLING = DwellingDefaults.bundled();
  private static final MoneyDefaults MONEY = MoneyDefaults.read();
  private static final List<PriceDefaults> TARIFFS = PriceDefaults.all();

  private VentilationFixtures() {}

  /**
   * The home of a survey, its gaps filled as in a real run.
   *
   * @param jurisdiction the id of a rule set
   * @param dwelling the keys of the dwelling in flow style, without its jurisdiction
   * @param rooms the rooms as YAML list entries
   */
  public static Home home(String jurisdiction, String dwelling, String rooms) {
    return home(HomeFixtures.survey(jurisdiction, dwelling, rooms));
  }

  /** The home of a survey, its gaps filled as in a real run. */
  public static Home home(Survey survey) {
    return HomeBuilder.build(survey, HomeFixtures.climate(), List.of(), DWELLING, MONEY, TARIFFS);
  }

  /** What is found about the ventilation of that home. */
  public static VentilationResult assess(String jurisdiction, String dwelling, String rooms) {
    return VentilationAssessor.assess(home(jurisdiction, dwelling, rooms), RULES, DEFAULTS);
  }

  /** The same by a rule set of one's own, given as the text of its file. */
  public static VentilationResult assessBy(String rules, String dwelling, String rooms) {
    RuleSet own = rules(rules);
    return VentilationAssessor.assess(home(own.id(), dwelling, rooms), RULES.with(own), DEFAULTS);
  }

  /** A rule set from the text of its file; fails where it has problems. */
  public static RuleSet rules(String text) {
    Reading<RuleSet> reading = RuleSets.read(text, "own-rules.yaml");
    return reading
        .value()
        .orElseThrow(
            () ->
                new AssertionError(
                    String.join("\n", reading.problems().stream().map(ProblemText::of).toList())));
  }

  /** The finding with an id. */
  public static Finding finding(VentilationResult result, String id) {
    return result.findings().stream()
        .filter(finding -> finding.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "no finding "
                        + id
                        + " among "
                        + result.findings().stream().map(Finding::id).toList()));
  }

  /** What a rule set, or a variant of it, asks of the home. */
  public static RuleComparison comparison(VentilationResult result, String id) {
    return result.comparisons().stream()
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no rule set " + id));
  }

  /** A likely flow in l/s. */
  public static double litres(Figure figure) {
    return Airflow.m3PerSecond(figure.likely()).litresPerSecond();
  }
}
