package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.OptionsFixtures.find;
import static org.drysill.OptionsFixtures.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Verdict;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class OptionsStudyTest {
  private static final String FLAT = OptionsFixtures.text("small-flat");
  private static final String WRECK = OptionsFixtures.text("wreck");

  private static List<String> ids(List<RankedMeasure> measures) {
    return measures.stream().map(RankedMeasure::measure).toList();
  }

  @Test
  void what_the_survey_excludes_is_listed_apart_and_first() {
    OptionsResult options =
        study(FLAT + "options: {exclude: [continuous extract fan, balanced heat recovery]}\n");
    assertThat(ids(options.ranked()))
        .doesNotContain("continuous-extract", "balanced-heat-recovery");
    assertThat(options.notHere().subList(0, 2))
        .allMatch(n -> n.kind() == NotHere.Kind.EXCLUDED)
        .extracting(NotHere::measure)
        .containsExactlyInAnyOrder("continuous-extract", "balanced-heat-recovery");
  }

  @Test
  void what_is_dearer_than_the_budget_is_never_among_the_recommended() {
    OptionsResult options = study(FLAT + "options: {budget: 400}\n");
    assertThat(options.ranked())
        .isNotEmpty()
        .allMatch(m -> m.money().firstCost().orElseThrow().likely() <= 400);
    assertThat(options.beyondBudget())
        .isNotEmpty()
        .allMatch(m -> m.money().firstCost().orElseThrow().likely() > 400)
        .allSatisfy(m -> assertThat(m.reasons().get(0)).contains("the budget is £400"));
    assertThat(ids(options.beyondBudget())).contains("balanced-heat-recovery");
    assertThat(options.beyondBudget().get(0).rank()).isOne();
  }

  @Test
  void a_price_that_equals_the_budget_is_within_it() {
    OptionsResult options = study(FLAT + "options: {budget: 450}\n");
    assertThat(ids(options.ranked())).contains("continuous-extract");
  }

  @Test
  void without_a_budget_nothing_is_beyond_it() {
    OptionsResult options = study(FLAT);
    assertThat(options.beyondBudget()).isEmpty();
    assertThat(options.budget()).isEmpty();
  }

  @Test
  void the_users_own_price_goes_before_the_default() {
    String own = FLAT + "options: {prices: {continuous extract fan: 700..900}}\n";
    RankedMeasure quoted = find(study(own), "continuous-extract.bathroom");
    assertThat(quoted.money().price().orElseThrow().quoted()).isTrue();
    assertThat(quoted.money().price().orElseThrow().standing()).isEqualTo("your quote");
    assertThat(quoted.money().firstCost().orElseThrow().value())
        .isEqualTo(new Range(700, 800, 900));
    RankedMeasure usual = find(study(FLAT), "continuous-extract.bathroom");
    assertThat(usual.money().price().orElseThrow().standing()).isEqualTo("default");
    assertThat(usual.money().firstCost().orElseThrow().value()).isEqualTo(new Range(300, 450, 900));
  }

  @Test
  void a_foreign_currency_without_quotes_has_no_money_and_says_why() {
    OptionsResult options =
        study(FLAT.replace("currency: GBP", "currency: SEK") + "options: {budget: 400}\n");
    RankedMeasure fan = find(options, "continuous-extract.bathroom");
    assertThat(fan.money().price()).isEmpty();
    assertThat(fan.money().annualCost()).isEmpty();
    assertThat(fan.money().againstNothing().kind()).isEqualTo(Payback.Kind.NOT_TOLD);
    assertThat(fan.money().notTold().orElseThrow())
        .contains("not in SEK", "its price and its upkeep cannot be told");
    assertThat(options.beyondBudget()).isEmpty();
  }

  @Test
  void a_quote_in_a_foreign_currency_is_counted_though_upkeep_is_not_told() {
    OptionsResult options =
        study(
            FLAT.replace("currency: GBP", "currency: SEK")
                + "options: {prices: {continuous extract fan: 5000}}\n");
    RankedMeasure quoted = find(options, "continuous-extract.bathroom");
    assertThat(quoted.money().notTold().orElseThrow()).contains(": its upkeep cannot be told");
    assertThat(quoted.money().annualCost()).isPresent();
  }

  /** A home that is dry, warm and well aired: nothing shows an effect, so nothing is ranked. */
  @Test
  void a_measure_without_a_shown_effect_is_never_recommended() {
    String well =
        FLAT.replace("60 %", "32 %")
            .replace("65 %", "32 %")
            .replace("70 %", "32 %")
            .replace("62 %", "32 %")
            .replace("temperature_factor: 0.72", "temperature_factor: 0.95")
            .replace("double 16 mm", "triple low-e")
            .replace("background_ventilator: 0 mm2", "background_ventilator: 40000 mm2")
            .replace("n50: 2 /h", "n50: 20 /h")
            .replace("value: 6 l/s", "value: 30 l/s");
    OptionsResult options = study(well);
    for (RankedMeasure measure : options.ranked()) {
      assertThat(shown(measure.effect())).as(measure.id()).isTrue();
    }
    assertThat(options.notHere()).anyMatch(n -> n.kind() == NotHere.Kind.NO_EFFECT);
  }

  /** The fixtures judge surfaces without what nobody reads; the whole assessment finds the same. */
  @Test
  void what_the_whole_assessment_of_surfaces_finds_makes_no_other_ranking() {
    for (String home : List.of(FLAT, WRECK)) {
      OptionsResult whole =
          OptionsStudy.study(OptionsFixtures.assess(home), OptionsFixtures.wholeBasis());
      OptionsResult quick = study(home);
      assertThat(whole.ranked()).isNotEmpty();
      assertThat(effects(quick)).isEqualTo(effects(whole));
    }
  }

  private static List<String> effects(OptionsResult options) {
    return Stream.concat(
            options.ranked().stream().map(m -> m.id() + months(m.effect()) + m.reasons()),
            options.first().stream().map(f -> f.id() + f.effect().map(e -> months(e))))
        .toList();
  }

  private static List<String> months(MeasureEffect effect) {
    return effect.surfaces().stream().map(s -> s.monthsBefore() + " " + s.monthsAfter()).toList();
  }

  @Test
  void whatever_is_ranked_anywhere_shows_an_effect() {
    for (String home : List.of(FLAT, WRECK)) {
      OptionsResult options = study(home + "options: {budget: 800}\n");
      assertThat(options.ranked()).isNotEmpty().allMatch(m -> shown(m.effect()));
      assertThat(options.beyondBudget()).isNotEmpty().allMatch(m -> shown(m.effect()));
    }
  }

  private static boolean shown(MeasureEffect effect) {
    return !effect.settles().isEmpty()
        || likely(effect.lacksAfter()) < likely(effect.lacksToday())
        || effect.surfaces().stream().anyMatch(s -> s.monthsAfter().likely() < s.monthsBefore());
  }

  private static double likely(Optional<Figure> figure) {
    return figure.map(Figure::likely).orElse(0.0);
  }

  @Test
  void leaks_then_broken_fans_and_slack_ducts_come_before_every_measure() {
    OptionsResult options = study(WRECK);
    List<String> first = options.first().stream().map(FirstThing::id).toList();
    assertThat(first)
        .containsSubsequence("leak-repair", "fan-repair.dead-fan")
        .contains("duct-repair.bath-fan", "repointing");
    assertThat(ids(options.ranked())).doesNotContain("leak-repair", "fan-repair", "duct-repair");
    FirstThing duct =
        options.first().stream()
            .filter(f -> f.id().equals("duct-repair.bath-fan"))
            .findFirst()
            .get();
    assertThat(duct.money().orElseThrow().firstCost().orElseThrow().likely()).isEqualTo(150);
    assertThat(duct.effect().orElseThrow().extract().get(0).verdict()).isEqualTo(Verdict.MEETS);
    assertThat(duct.because()).contains("slack");
  }

  @Test
  void unsafe_appliances_come_first_and_extract_stands_behind_until_it_is_tested() {
    String fire =
        FLAT.replace(
            "  heating:",
            "  combustion_appliances: [{kind: open-flued fire, room: living}]\n  heating:");
    OptionsResult options = study(fire);
    assertThat(options.first().get(0).id()).startsWith("open-flue");
    assertThat(options.first().get(0).money()).isEmpty();
    List<Boolean> admissible = options.ranked().stream().map(RankedMeasure::admissible).toList();
    assertThat(admissible).contains(true, false);
    assertThat(admissible.lastIndexOf(true)).isLessThan(admissible.indexOf(false));
    RankedMeasure extract = find(options, "continuous-extract.bathroom");
    assertThat(extract.admissible()).isFalse();
    assertThat(extract.cautions()).contains("open-flue-with-extract");
    assertThat(options.cautions()).extracting(c -> c.id()).contains("open-flue-with-extract");
  }

  @Test
  void no_extract_fan_is_put_into_a_room_with_a_stove() {
    String stove =
        FLAT.replace(
            "  heating:",
            "  combustion_appliances: [{kind: solid-fuel stove, room: bathroom}]\n  heating:");
    OptionsResult options = study(stove);
    assertThat(options.notHere())
        .filteredOn(n -> n.kind() == NotHere.Kind.UNSAFE)
        .extracting(NotHere::measure)
        .contains("continuous-extract", "intermittent-extract");
    assertThat(options.ranked())
        .noneMatch(m -> m.measure().endsWith("-extract") && m.scope().rooms().contains("bathroom"));
  }

  @Test
  void a_flow_that_no_document_prints_is_not_guessed() {
    OptionsResult options =
        study(FLAT.replace("jurisdiction: england", "jurisdiction: en-16798-1"));
    assertThat(options.notHere())
        .filteredOn(n -> n.kind() == NotHere.Kind.NOT_TOLD)
        .isNotEmpty()
        .allSatisfy(n -> assertThat(n.because()).contains("no document gives the flow"));
  }

  @Test
  void every_figure_of_a_ranked_measure_has_a_working() {
    for (RankedMeasure measure : study(WRECK).ranked()) {
      assertThat(measure.money().heatLost().working().formula()).isNotBlank();
      assertThat(measure.money().annualCost().orElseThrow().working().inputs()).isNotEmpty();
      measure
          .effect()
          .excessChange()
          .ifPresent(f -> assertThat(f.working().sources()).isNotEmpty());
      measure.effect().lacksAfter().ifPresent(f -> assertThat(f.working().inputs()).hasSize(2));
      measure
          .effect()
          .wetGlassMonths()
          .ifPresent(f -> assertThat(f.working().formula()).contains("Σ"));
    }
  }

  @Test
  void reasons_are_at_most_three_sentences_with_a_full_stop() {
    for (RankedMeasure measure : study(WRECK + "options: {budget: 2000}\n").ranked()) {
      assertThat(measure.reasons()).as(measure.id()).hasSizeLessThanOrEqualTo(3);
      assertThat(measure.reasons()).allMatch(r -> r.endsWith("."));
    }
  }

  @Test
  void sizes_that_nobody_measured_are_assumed_aloud() {
    String text = OptionsFixtures.text("wreck");
    String unmeasured = text.replaceAll(", width: [0-9]+ mm, height: [0-9]+ mm", "");
    assertThat(unmeasured).isNotEqualTo(text);
    assertThat(assumed(text)).doesNotContain("options.window_side");
    assertThat(assumed(unmeasured)).contains("options.window_side");
  }

  private static List<String> assumed(String text) {
    return OptionsFixtures.study(text).assumptions().stream().map(Assumption::id).toList();
  }
}
