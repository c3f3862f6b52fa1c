package org.drysill.architecture;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInAnyPackage;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.drysill.survey.Edition;

/** The rules of the house, each with its reason. {@link HouseRulesBiteTest} breaks each of them. */
@AnalyzeClasses(packages = "org.drysill", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String[] PURE = {
    "org.drysill.physics..", "org.drysill.assess..", "org.drysill.options.."
  };

  @ArchTest
  static final ArchRule the_picture_of_the_house_is_true =
      classes()
          .should(
              adhereToPlantUmlDiagram(
                  Path.of("src/docs/pipeline.puml"),
                  consideringOnlyDependenciesInAnyPackage("org.drysill..")))
          .because("a newcomer trusts the picture");

  @ArchTest
  static final ArchRule physics_knows_nothing_of_ours =
      noClasses()
          .that()
          .resideInAPackage("org.drysill.physics..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.drysill",
              "org.drysill.yaml..",
              "org.drysill.survey..",
              "org.drysill.reference..",
              "org.drysill.assess..",
              "org.drysill.options..",
              "org.drysill.report..",
              "org.drysill.cli..")
          .because("nature does not read surveys");

  @ArchTest
  static final ArchRule the_core_is_pure =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.logging..")
          .because("the same survey must give the same figures everywhere and for ever");

  @ArchTest
  static final ArchRule the_core_reads_no_clock_and_no_dice =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .callMethodWhere(
              target(name("now"))
                  .and(target(owner(resideInAPackage("java.time.."))))
                  .as("the clock is asked"))
          .orShould()
          .callMethodWhere(call(System.class, "currentTimeMillis"))
          .orShould()
          .callMethodWhere(call(System.class, "nanoTime"))
          .orShould()
          .callMethodWhere(call(System.class, "getProperty"))
          .orShould()
          .callMethodWhere(call(Locale.class, "getDefault"))
          .orShould()
          .callMethodWhere(call(Math.class, "random"))
          .orShould()
          .callConstructor(Random.class)
          .because("dates, locales and seeds come in as data");

  @ArchTest
  static final ArchRule the_core_knows_no_editions =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat()
          .areAssignableTo(Edition.class)
          .because("every edition of a report tells the same figures");

  @ArchTest
  static final ArchRule only_the_commands_touch_the_process =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.drysill.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethodWhere(call(System.class, "exit"))
          .orShould()
          .callMethodWhere(call(System.class, "getenv"))
          .because("everything below main must run inside a test");

  @ArchTest
  static final ArchRule yaml_is_parsed_in_one_place =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.drysill.yaml..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.yaml..")
          .because("one reader gives every problem its place");

  @ArchTest
  static final ArchRule paper_is_made_in_one_place =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.drysill.report..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "freemarker..", "org.knowm..", "org.apache.pdfbox..", "com.openhtmltopdf..")
          .because("what is said is apart from what is found");

  @ArchTest
  static final ArchRule arguments_are_parsed_in_one_place =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.drysill.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..")
          .because("other programs use the same door without a command line");

  @ArchTest
  static final ArchRule top_level_packages_have_no_cycles =
      slices().matching("org.drysill.(*)..").should().beFreeOfCycles();

  /** A call of a method by its name, whatever its parameters. */
  private static DescribedPredicate<JavaMethodCall> call(Class<?> type, String method) {
    return DescribedPredicate.describe(
        type.getSimpleName() + "." + method + " is called",
        access ->
            access.getName().equals(method) && equivalentTo(type).test(access.getTargetOwner()));
  }
}
