package org.drysill.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drysill.assess.violations.Assessments;
import org.drysill.physics.violations.Nature;
import org.drysill.report.violations.Pages;
import org.drysill.survey.RoomUse;
import org.drysill.survey.violations.Seen;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * A rule that nothing can break protects nothing: each rule of {@link ArchitectureTest} is held
 * against classes that break it, one for each thing that it forbids, and must tell of every one.
 */
class HouseRulesBiteTest {
  private static final Map<String, List<List<Class<?>>>> BROKEN =
      new TreeMap<>(
          Map.of(
              "the_picture_of_the_house_is_true",
              List.of(List.of(Nature.ReadsASurvey.class), List.of(Seen.Judges.class)),
              "physics_knows_nothing_of_ours",
              List.of(
                  List.of(Nature.ReadsASurvey.class),
                  List.of(Nature.ReadsYaml.class),
                  List.of(Nature.LooksThingsUp.class),
                  List.of(Nature.Judges.class),
                  List.of(Nature.Advises.class),
                  List.of(Nature.Reports.class),
                  List.of(Nature.RunsThePipeline.class)),
              "the_core_is_pure",
              List.of(
                  List.of(Assessments.ReadsAStream.class),
                  List.of(Assessments.ReadsAFile.class),
                  List.of(Assessments.ReadsTheNet.class),
                  List.of(Assessments.Logs.class)),
              "the_core_reads_no_clock_and_no_dice",
              List.of(
                  List.of(Assessments.AsksTheDate.class),
                  List.of(Assessments.AsksTheDateOfAZone.class),
                  List.of(Assessments.AsksTheInstant.class),
                  List.of(Assessments.CountsMillis.class),
                  List.of(Assessments.CountsNanos.class),
                  List.of(Assessments.ReadsAProperty.class),
                  List.of(Assessments.TakesTheLocaleOfTheMachine.class),
                  List.of(Assessments.TakesTheLocaleOfACategory.class),
                  List.of(Assessments.ThrowsDice.class),
                  List.of(Assessments.ThrowsDiceWithoutSeed.class)),
              "the_core_knows_no_editions",
              List.of(List.of(Assessments.KnowsItsEdition.class)),
              "only_the_commands_touch_the_process",
              List.of(
                  List.of(Assessments.Prints.class),
                  List.of(Assessments.Complains.class),
                  List.of(Assessments.Exits.class),
                  List.of(Assessments.ReadsAVariable.class),
                  List.of(Assessments.ReadsTheEnvironment.class)),
              "yaml_is_parsed_in_one_place",
              List.of(List.of(Seen.ParsesYaml.class)),
              "paper_is_made_in_one_place",
              List.of(
                  List.of(Assessments.FillsATemplate.class),
                  List.of(Assessments.DrawsAChart.class),
                  List.of(Assessments.WritesAPdf.class),
                  List.of(Assessments.RendersHtml.class)),
              "arguments_are_parsed_in_one_place",
              List.of(List.of(Pages.ParsesArguments.class)),
              "top_level_packages_have_no_cycles",
              List.of(List.of(Nature.ReadsASurvey.class, Seen.Computes.class, RoomUse.class))));

  @Test
  void every_rule_of_the_house_is_broken_here() {
    assertThat(rules().keySet()).isEqualTo(BROKEN.keySet());
  }

  @TestFactory
  Stream<DynamicTest> a_rule_tells_of_whatever_breaks_it() {
    return BROKEN.entrySet().stream()
        .flatMap(
            entry ->
                entry.getValue().stream()
                    .map(
                        classes ->
                            DynamicTest.dynamicTest(
                                entry.getKey() + " " + classes,
                                () -> bites(entry.getKey(), classes))));
  }

  /** The same class outside of the place that a rule speaks of leaves the rule in peace. */
  @Test
  void a_rule_does_not_tell_of_what_it_does_not_speak_of() {
    JavaClasses files = imported(List.of(Seen.ReadsAFile.class));
    assertThat(rules().get("the_core_is_pure").evaluate(files).hasViolation()).isFalse();
    JavaClasses seeded = imported(List.of(Assessments.ThrowsSeededDice.class));
    assertThat(rules().get("the_core_reads_no_clock_and_no_dice").evaluate(seeded).hasViolation())
        .isFalse();
  }

  private static void bites(String rule, List<Class<?>> classes) {
    assertThat(rules().get(rule).evaluate(imported(classes)).hasViolation()).isTrue();
  }

  private static JavaClasses imported(List<Class<?>> classes) {
    return new ClassFileImporter().importClasses(classes);
  }

  private static Map<String, ArchRule> rules() {
    Map<String, ArchRule> rules = new TreeMap<>();
    Arrays.stream(ArchitectureTest.class.getDeclaredFields())
        .filter(field -> field.getType() == ArchRule.class)
        .forEach(field -> rules.put(field.getName(), rule(field)));
    return rules;
  }

  private static ArchRule rule(Field field) {
    try {
      return ((ArchRule) field.get(null)).allowEmptyShould(true);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }
}
