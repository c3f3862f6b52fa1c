package org.drysill.report.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.drysill.ReportWishes;
import org.drysill.Reports;
import org.drysill.assess.Figure;
import org.drysill.report.block.Block;
import org.drysill.report.block.Section;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.block.Workings;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Subject;
import org.drysill.report.view.ReportView;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The rule: a figure that stands in a block of the report leads to its working from that block, by
 * its own number or by that of the formula it shares with others; unless it stands as it was read,
 * declared or printed elsewhere, and so has no working.
 *
 * <p>Read from the finished view: what prints as a figure with its bounds does is taken for that
 * figure. A number without bounds may be many things, and is left to {@link PrintedFiguresTest}.
 */
class EveryFigureIsLedToTest {
  /** The short report has chapters of its own, and a test of its own for the same. */
  private static final List<String> EDITIONS = List.of("survey", "record", "remediation");

  static Stream<Arguments> examples_in_each_edition() {
    return Stream.of("1930s-terrace", "owners-bungalow", "top-floor-flat")
        .flatMap(e -> EDITIONS.stream().map(edition -> Arguments.of(e, edition)));
  }

  @ParameterizedTest
  @MethodSource("examples_in_each_edition")
  void from_the_block_in_which_it_stands(String example, String edition) {
    Subject subject =
        Reports.subject(
            Path.of("example-surveys", example, "survey.yaml"),
            ReportWishes.NONE.withEdition(edition));
    ReportView view = ReportView.of(subject);
    List<Section> sections = new ArrayList<>(List.of(view.verdict()));
    sections.addAll(view.sections());
    Map<String, Set<String>> families = families(sections);
    Numbers numbers = Desk.numbers(subject.assessment());
    Map<String, Set<String>> prints = new LinkedHashMap<>();
    for (Figure figure : Found.in(subject.results()).figures()) {
      if (!PrintedFigures.hasNone(figure)) {
        Set<String> mine = families.getOrDefault(key(figure, numbers), Set.of());
        for (Rounding rounding : Rounding.values()) {
          String print = numbers.spread(figure.value(), figure.unit(), rounding);
          if (print.contains("(")) {
            prints.computeIfAbsent(print, p -> new HashSet<>()).addAll(mine);
          }
        }
      }
    }
    assertThat(prints).hasSizeGreaterThan(20);
    assertThat(offenders(sections, prints)).isEmpty();
  }

  /** Each with its place. */
  private static List<String> offenders(List<Section> sections, Map<String, Set<String>> prints) {
    List<String> offenders = new ArrayList<>();
    for (Section section : sections) {
      for (Block block : section.blocks()) {
        PrintedBlock printed = new PrintedBlock(block);
        Set<String> led = new HashSet<>();
        printed.workings().map(PrintedFigures::family).forEach(led::add);
        prints.forEach(
            (print, families) -> {
              if (printed.shows(print) && families.stream().noneMatch(led::contains)) {
                offenders.add(
                    section.id() + ", " + block.kind() + ": " + print + " of " + families);
              }
            });
      }
    }
    return offenders;
  }

  private static String key(Figure figure, Numbers numbers) {
    return figure.working().formula() + "|" + numbers.worked(figure.value(), figure.unit());
  }

  /** In which families the appendix tells a figure, by its formula and value. */
  private static Map<String, Set<String>> families(List<Section> sections) {
    Map<String, Set<String>> families = new HashMap<>();
    sections.stream()
        .flatMap(section -> section.blocks().stream())
        .filter(Workings.class::isInstance)
        .flatMap(block -> ((Workings) block).families().stream())
        .forEach(family -> family.items().forEach(entry -> note(families, family, entry)));
    return families;
  }

  private static void note(
      Map<String, Set<String>> families, WorkingFamily family, WorkingEntry entry) {
    families
        .computeIfAbsent(family.formula() + "|" + entry.value(), k -> new HashSet<>())
        .addAll(Arrays.asList(family.number()));
  }
}
