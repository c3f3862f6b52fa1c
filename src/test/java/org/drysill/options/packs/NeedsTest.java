package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.options.StudiedEntries;
import org.drysill.options.money.AirBill;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.reference.measures.Prerequisite;
import org.junit.jupiter.api.Test;

/** Measures that must have others before them. */
class NeedsTest {
  /** The small flat with a door of the bathroom and of the kitchen that lets hardly any air by. */
  private static final String SHUT =
      OptionsFixtures.text("small-flat")
          .replace(
              "floor_area: 4 m2",
              "floor_area: 4 m2\n    doors: [{to: living, undercut: 1 mm, width: 760 mm}]")
          .replace(
              "floor_area: 8 m2",
              "floor_area: 8 m2\n    doors: [{to: living, undercut: 1 mm, width: 760 mm}]");

  private static PackageStudy study(String text) {
    Assessment assessment = OptionsFixtures.assess(text);
    return new PackageStudy(
        assessment,
        OptionsFixtures.basis(),
        StudiedEntries.of(assessment, OptionsFixtures.basis()),
        new AirBill(30_000, 2_000, 6_000),
        HomeZones.of(assessment).orElseThrow());
  }

  @Test
  void no_package_lacks_what_one_of_its_measures_needs() {
    PackageStudy study = study(SHUT);
    Candidates candidates = study.candidates();
    assertThat(candidates.air())
        .extracting(Member::id)
        .anyMatch(i -> i.startsWith("door-undercut"));
    assertThat(candidates.air())
        .filteredOn(m -> m.measure().id().equals("continuous-extract"))
        .isNotEmpty()
        .allMatch(m -> !m.candidate().needs().isEmpty());
    study
        .packages()
        .each(
            v -> {
              List<Member> members = candidates.in(v);
              for (Member member : members) {
                for (Prerequisite need : member.candidate().needs()) {
                  if (candidates.each().stream().anyMatch(b -> b.brings(need, member))) {
                    assertThat(members).anyMatch(b -> b.brings(need, member));
                  }
                }
              }
            });
  }

  @Test
  void what_is_needed_is_done_before_what_needs_it() {
    PackageStudy study = study(SHUT);
    Candidates candidates = study.candidates();
    OrderOfWorks works = new OrderOfWorks(study.packages(), study.order());
    Member fan = find(candidates, "continuous-extract.bathroom");
    Member door = candidates.air().stream().filter(m -> m.brings(fan)).findFirst().orElseThrow();
    Bits both = candidates.with(candidates.with(new Bits(0, 0), fan), door);
    List<PackValue> steps = works.of(both);
    assertThat(candidates.in(steps.get(0))).containsExactly(door);
    assertThat(steps.get(1).members()).isEqualTo(both);
    // By itself the fan is no package, yet an order for it is found.
    assertThat(works.of(candidates.with(new Bits(0, 0), fan))).hasSize(1);
  }

  private static Member find(Candidates candidates, String id) {
    return candidates.each().stream().filter(m -> m.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void the_best_package_has_the_gap_under_the_door_that_its_fan_needs() {
    PackagesResult packages = OptionsFixtures.study(SHUT).packages().orElseThrow();
    for (MeasurePackage one : packages.best()) {
      List<String> ids = one.steps().stream().map(MeasurePackage.Step::id).toList();
      boolean fans = ids.stream().anyMatch(i -> i.startsWith("continuous-extract"));
      assertThat(!fans || ids.stream().anyMatch(i -> i.startsWith("door-undercut"))).isTrue();
    }
  }

  @Test
  void glazing_asks_for_air_from_anywhere_where_the_home_lacks_it() {
    String wreck = OptionsFixtures.text("wreck");
    Candidates candidates = study(wreck).candidates();
    assertThat(candidates.fabric())
        .filteredOn(m -> m.measure().surface().flatMap(s -> s.glazing()).isPresent())
        .isNotEmpty()
        .allSatisfy(
            pane ->
                assertThat(candidates.air().stream().filter(a -> a.brings(pane)))
                    .hasSizeGreaterThan(1));
  }

  /** Rain that wind drives at a filled cavity comes through it: that is judged on site first. */
  @Test
  void cavities_of_a_home_that_stands_exposed_are_not_filled_in_any_package() {
    String cavity =
        OptionsFixtures.text("wreck").replace("walls: solid brick", "walls: cavity brick");
    assertThat(study(cavity).candidates().each())
        .anyMatch(m -> m.measure().id().equals("cavity-fill"));
    String exposed = cavity.replace("  storeys: 2\n", "  storeys: 2\n  shelter: exposed\n");
    assertThat(study(exposed).candidates().each())
        .isNotEmpty()
        .noneMatch(m -> m.measure().id().equals("cavity-fill"));
    assertThat(OptionsFixtures.study(exposed).ranked())
        .filteredOn(m -> m.measure().equals("cavity-fill"))
        .isNotEmpty()
        .allSatisfy(
            m ->
                assertThat(m.prerequisites())
                    .anyMatch(p -> p.startsWith("Where wind drives rain at the wall")));
  }

  /** Where the bringers are left out of the ranking, the need is printed and asks for nothing. */
  @Test
  void a_system_for_tight_homes_has_no_place_in_a_leaky_one() {
    String leaky = OptionsFixtures.text("wreck").replace("n50: 4 /h", "n50: 11 /h");
    PackagesResult packages = OptionsFixtures.study(leaky).packages().orElseThrow();
    assertThat(packages.leftOut())
        .anyMatch(s -> s.contains("Balanced heat recovery") && s.contains("it needs first what"));
    assertThat(OptionsFixtures.study(leaky).ranked())
        .filteredOn(m -> m.measure().equals("balanced-heat-recovery"))
        .allSatisfy(
            m -> assertThat(m.prerequisites()).contains("The home is tight, or made tight first."));
    assertThat(study(leaky).candidates().each())
        .noneMatch(m -> m.measure().id().equals("balanced-heat-recovery"));
  }
}
