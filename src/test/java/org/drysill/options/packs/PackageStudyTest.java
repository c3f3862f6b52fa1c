package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.MoneyFacts;
import org.drysill.options.CostParts;
import org.drysill.options.MeasurePackage;
import org.drysill.options.OptionsBasis;
import org.drysill.options.OptionsResult;
import org.drysill.options.PackagesResult;
import org.drysill.options.RankedMeasure;
import org.drysill.options.StudiedEntries;
import org.drysill.options.money.AirBill;
import org.drysill.options.money.Costed;
import org.drysill.options.rank.Entry;
import org.drysill.physics.energy.PresentValue;
import org.junit.jupiter.api.Test;

class PackageStudyTest {
  private static final String FLAT = OptionsFixtures.text("small-flat");
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final AirBill PRICE = new AirBill(30_000, 2_000, 6_000);

  private static PackagesResult of(String text) {
    return OptionsFixtures.study(text).packages().orElseThrow();
  }

  @Test
  void the_flat_gets_its_air_and_each_step_brings_it_nearer() {
    PackagesResult packages = of(FLAT);
    MeasurePackage best = packages.best().get(0);
    assertThat(best.name()).isEqualTo("A");
    assertThat(best.reaches()).isTrue();
    assertThat(best.closedPercent()).isEqualTo(100);
    double lacks = packages.today().lacks().likely();
    for (MeasurePackage.Step step : best.steps()) {
      assertThat(step.lacksM3S()).isLessThan(lacks);
      lacks = step.lacksM3S();
    }
    assertThat(lacks).isZero();
    assertThat(best.reasons().get(0)).isEqualTo("It brings all the air that is lacking.");
    assertThat(packages.best().get(1).reasons().get(2)).contains("more a year, all in all");
    assertThat(best.winterHumidity().orElseThrow().likely())
        .isLessThan(packages.today().winterHumidity().orElseThrow().likely());
  }

  @Test
  void a_package_of_one_has_the_figures_of_the_measure() {
    OptionsResult options = OptionsFixtures.study(FLAT);
    Assessment assessment = OptionsFixtures.assess(FLAT);
    PackageStudy study = study(assessment, BASIS);
    study
        .packages()
        .each(
            v -> {
              if (v.size() == 1) {
                RankedMeasure one =
                    OptionsFixtures.find(options, study.candidates().in(v).get(0).id());
                assertThat(v.bill().annual())
                    .isEqualTo(one.money().annualCost().orElseThrow().likely());
                double extract = WetRooms.of(assessment).lack(study.candidates().in(v));
                assertThat(v.lacks() - extract)
                    .isCloseTo(one.effect().lacksAfter().orElseThrow().likely(), within(1e-12));
              }
            });
  }

  @Test
  void the_parts_of_the_cost_add_up_to_it_and_the_months_to_their_sums() {
    PackagesResult packages = of(FLAT);
    MoneyFacts money = OptionsFixtures.assess(FLAT).home().money();
    double perYear =
        PresentValue.annuityFactor(money.discountRate().likely(), money.horizon().likely());
    assertThat(packages.today().costParts().orElseThrow()).isEqualTo(CostParts.NONE);
    for (MeasurePackage one : packages.best()) {
      CostParts parts = one.costParts().orElseThrow();
      assertThat(parts.total() * perYear).isCloseTo(one.annualCost().likely(), within(1e-6));
      assertThat(parts.firstCost()).isCloseTo(one.firstCost().likely(), within(1e-9));
      assertThat((parts.upkeep() + parts.electricity() + parts.heat()) * perYear)
          .isCloseTo(one.runningCost().likely(), within(1e-6));
    }
    Stream.concat(packages.best().stream(), Stream.of(packages.today()))
        .forEach(
            p -> {
              assertThat(sum(p.atRisk().mould())).isEqualTo(p.mouldMonths());
              assertThat(sum(p.atRisk().wetGlass())).isEqualTo(p.wetGlassMonths());
            });
  }

  @Test
  void without_a_price_there_are_no_parts_of_the_cost() {
    PackageStudy study = study(OptionsFixtures.assess(FLAT), BASIS);
    Member priced = study.candidates().air().get(0);
    Costed costed = priced.entry().costed();
    Member unpriced =
        new Member(
            new Entry(
                new Costed(costed.studied(), costed.money(), costed.heatCost(), Optional.empty()),
                List.of(),
                true),
            priced.change());
    PackCost cost = new PackCost(OptionsFixtures.assess(FLAT).home().money());
    PackValue value = study.packages().of(new PackValue.Bits(1, 0));
    assertThat(cost.of(value, List.of(priced))).isPresent();
    assertThat(cost.of(value, List.of(priced, unpriced))).isEmpty();
  }

  private static int sum(List<Integer> months) {
    return months.stream().mapToInt(Integer::intValue).sum();
  }

  /** By hand: 15 l/s asked of the bathroom less 6 found, 60 of a kitchen without any extract. */
  @Test
  void extract_that_wet_rooms_lack_counts_until_a_fan_brings_it() {
    WetRooms rooms = WetRooms.of(OptionsFixtures.assess(FLAT));
    assertThat(rooms.today()).containsOnlyKeys("bathroom", "kitchen");
    assertThat(rooms.today().get("bathroom")).isCloseTo(0.009, within(1e-9));
    assertThat(rooms.today().get("kitchen")).isCloseTo(0.060, within(1e-9));
    assertThat(rooms.lack(List.of())).isCloseTo(0.069, within(1e-9));
  }

  private static PackageStudy study(Assessment assessment, OptionsBasis basis) {
    return new PackageStudy(
        assessment,
        basis,
        StudiedEntries.of(assessment, basis),
        PRICE,
        HomeZones.of(assessment).orElseThrow());
  }

  @Test
  void the_works_are_those_of_the_best_package_in_their_order() {
    OptionsResult options = OptionsFixtures.study(FLAT);
    assertThat(options.works())
        .extracting(RankedMeasure::id)
        .containsExactlyElementsOf(
            options.packages().orElseThrow().best().get(0).steps().stream()
                .map(MeasurePackage.Step::id)
                .toList());
  }

  @Test
  void nothing_in_one_package_excludes_another_of_it() {
    for (MeasurePackage one : of(FLAT).best()) {
      List<String> measures =
          one.steps().stream().map(s -> s.id().replaceAll("\\..*", "")).toList();
      assertThat(measures).doesNotHaveDuplicates();
    }
    PackageStudy study = study(OptionsFixtures.assess(FLAT), BASIS);
    study
        .packages()
        .each(
            v -> {
              List<Member> members = study.candidates().in(v);
              for (Member a : members) {
                assertThat(members).noneMatch(b -> !a.id().equals(b.id()) && a.excludes(b));
              }
            });
  }

  @Test
  void a_budget_bounds_what_is_recommended_and_says_what_would_be_better() {
    PackagesResult packages = of(FLAT + "options: {budget: 400}\n");
    assertThat(packages.best()).isNotEmpty().allMatch(p -> p.firstCost().likely() <= 400);
    MeasurePackage beyond = packages.beyondBudget().orElseThrow();
    assertThat(beyond.firstCost().likely()).isGreaterThan(400);
    assertThat(beyond.reasons().get(2)).startsWith("It is surer than A");
    assertThat(packages.budgets()).anyMatch(b -> b.money() == 400);
    assertThat(packages.budgets()).allMatch(b -> b.spent() <= b.money());
  }

  @Test
  void beyond_a_budget_that_reaches_the_best_nothing_is_better() {
    PackagesResult packages = of(FLAT + "options: {budget: 100000}\n");
    assertThat(packages.best()).isNotEmpty();
    assertThat(packages.beyondBudget()).isEmpty();
  }

  @Test
  void a_budget_that_buys_nothing_leaves_only_what_is_beyond_it() {
    PackagesResult packages =
        of(
            FLAT.replace("currency: GBP", "currency: SEK")
                + "options: {budget: 10, prices: {continuous extract fan: 450, double glazing:"
                + " 900, secondary glazing: 100}}\n");
    assertThat(packages.best()).isEmpty();
    assertThat(packages.beyondBudget()).isPresent();
    assertThat(packages.inNone()).isEmpty();
    assertThat(packages.leftOut()).anyMatch(s -> s.endsWith("its cost is not known."));
  }

  @Test
  void without_readings_the_home_is_one_zone() {
    String unread =
        FLAT.replaceAll("(?m)^ +readings: .*\\n", "").replaceAll("(?m)^outdoor_readings.*\\n", "");
    PackagesResult packages = of(unread);
    assertThat(packages.best()).isNotEmpty();
    assertThat(packages.limits()).anyMatch(s -> s.contains("the home counts as one"));
  }

  @Test
  void where_nothing_is_lacking_there_is_nothing_to_combine() {
    String hood =
        "fans: [{id: hood, kind: extract hood, measured_flow: {value: 70 l/s, instrument: hood},"
            + " hours_per_day: 1 h}]\n    moisture_sources: [{kind: cooking";
    String airy =
        FLAT.replace("n50: 2 /h", "n50: 40 /h")
            .replace("factor: 0.72", "factor: 0.98")
            .replace("value: 6 l/s", "value: 30 l/s")
            .replace("moisture_sources: [{kind: cooking", hood);
    assertThat(OptionsFixtures.study(airy).packages()).isEmpty();
    Assessment assessment = OptionsFixtures.assess(FLAT);
    assertThat(
            PackageStudy.of(
                assessment, BASIS, StudiedEntries.of(assessment, BASIS).subList(0, 1), PRICE))
        .isEqualTo(Optional.empty());
  }

  @Test
  void too_many_packages_drop_what_is_dominated_and_then_the_last_and_say_so() {
    Assessment assessment = OptionsFixtures.assess(FLAT);
    HomeZones zones = HomeZones.of(assessment).orElseThrow();
    VapourChanges changes = new VapourChanges(zones, assessment.moisture().items(), 1e-4);
    List<Member> members =
        StudiedEntries.of(assessment, BASIS).stream()
            .map(e -> new Member(e, changes.of(e.costed().studied())))
            .toList();
    Candidates few = Candidates.of(members, 20);
    long sides = Subsets.of(Candidates.against(few.air(), few.air()), 1000).length;
    long fabric = Subsets.of(Candidates.against(few.fabric(), few.fabric()), 1000).length;
    assertThat(sides * fabric).isLessThanOrEqualTo(20);
    assertThat(few.size()).isPositive();
    String told = String.join(" ", few.leftOut());
    assertThat(members)
        .filteredOn(m -> !few.each().contains(m))
        .hasSize(members.size() - few.size())
        .allSatisfy(m -> assertThat(told).contains(m.candidate().title()));
    assertThat(few.leftOut())
        .hasSize(2)
        .anyMatch(s -> s.contains("costs no more and does as much"))
        .anyMatch(s -> s.contains("more than 20 packages"));
    assertThat(Candidates.of(members, 1_000_000).leftOut()).isEmpty();
  }

  @Test
  void no_measure_changes_both_the_air_and_a_surface() {
    assertThat(BASIS.catalogue().measures())
        .noneMatch(
            m ->
                (m.air().isPresent() || m.moisture().isPresent())
                    && (m.surface().isPresent() || m.warmth().isPresent()));
  }

  @Test
  void what_is_in_none_of_the_best_says_why() {
    PackagesResult packages = of(FLAT);
    assertThat(packages.inNone())
        .isNotEmpty()
        .anyMatch(n -> n.because().startsWith("package A has its place taken by"))
        .anyMatch(n -> n.because().startsWith("added to package A it would"));
  }
}
