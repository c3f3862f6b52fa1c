package org.drysill.options.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.options.MeasureEffect;
import org.drysill.options.OptionsBasis;
import org.drysill.options.SurfaceChange;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.Placings;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class EffectStudyTest {
  private static final String FLAT = OptionsFixtures.text("small-flat");
  private static final String WRECK = OptionsFixtures.text("wreck");

  private static Studied studied(String survey, String measure, String id) {
    Assessment assessment = OptionsFixtures.assess(survey);
    OptionsBasis basis = OptionsFixtures.basis();
    Candidate candidate =
        new Placings(assessment, basis)
            .of(OptionsFixtures.measure(measure)).candidates().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    return new EffectStudy(assessment, basis).of(candidate).orElseThrow();
  }

  private static MeasureEffect effect(String survey, String measure, String id) {
    return studied(survey, measure, id).effect();
  }

  private static Optional<SurfaceChange> place(MeasureEffect effect, String id) {
    return effect.surfaces().stream().filter(s -> s.place().equals(id)).findFirst();
  }

  /** Extract of 8 l/s for the 1 l/s of the old fan: √(8² + Qi²) − √(1² + Qi²). */
  @Test
  void unbalanced_air_meets_leaks_in_quadrature() {
    double leaks =
        OptionsFixtures.assess(FLAT).ventilation().provided().infiltration().likely() * 1000;
    MeasureEffect effect = effect(FLAT, "continuous-extract", "continuous-extract.bathroom");
    assertThat(effect.addedAir().orElseThrow().likely() * 1000)
        .isCloseTo(Math.hypot(8, leaks) - Math.hypot(1, leaks), within(1e-6));
    double asked = 19;
    assertThat(effect.lacksToday().orElseThrow().likely() * 1000)
        .isCloseTo(asked - Math.hypot(1, leaks), within(1e-6));
    assertThat(effect.lacksAfter().orElseThrow().likely() * 1000)
        .isCloseTo(asked - Math.hypot(8, leaks), within(1e-6));
  }

  @Test
  void a_fan_settles_the_extract_that_falls_short_today() {
    MeasureEffect effect = effect(FLAT, "continuous-extract", "continuous-extract.bathroom");
    assertThat(effect.extract()).singleElement().matches(f -> f.verdict() == Verdict.MEETS);
    assertThat(effect.settles()).contains("room.bathroom.extract");
    String strong = FLAT.replace("value: 6 l/s", "value: 40 l/s");
    Assessment met = OptionsFixtures.assess(strong);
    assertThat(new Settled(met.ventilation()).by(candidate(FLAT), effect.extract())).isEmpty();
  }

  private static Candidate candidate(String survey) {
    return new Placings(OptionsFixtures.assess(survey), OptionsFixtures.basis())
        .of(OptionsFixtures.measure("continuous-extract"))
        .candidates()
        .get(0);
  }

  /** A fan catches only what the one before it did not: 6 of the 15 l/s asked are there. */
  @Test
  void a_better_fan_is_credited_with_what_was_lacking() {
    Studied fan = studied(FLAT, "continuous-extract", "continuous-extract.bathroom");
    Assessment assessment = OptionsFixtures.assess(FLAT);
    double shower =
        assessment.moisture().items().stream()
            .filter(i -> i.kind().equals("shower"))
            .mapToDouble(i -> i.production().likely())
            .sum();
    double lacking =
        assessment.ventilation().extract().stream()
            .filter(f -> f.room().equals(Optional.of("bathroom")))
            .mapToDouble(f -> 1 - f.provided().get().likely() / f.required().get().likely())
            .min()
            .orElseThrow();
    assertThat(fan.water().likely())
        .isCloseTo(0.45 * lacking * shower * believed(FLAT), within(1e-12));
    String none = FLAT.replace("measured_flow: {value: 6 l/s, instrument: hood}, ", "");
    String dead = none.replace("kind: intermittent extract", "kind: fitted but not working");
    assertThat(studied(dead, "continuous-extract", "continuous-extract.bathroom").water().likely())
        .isCloseTo(0.45 * shower * believed(dead), within(1e-12));
  }

  /** Rules of one's own may ask for nothing in a room; then nothing of what is asked is there. */
  @Test
  void where_no_extract_is_asked_a_fan_catches_its_whole_share() {
    Assessment assessment = OptionsFixtures.assess(FLAT);
    Candidate fan = candidate(FLAT);
    List<Finding> asked =
        assessment.ventilation().extract().stream().map(EffectStudyTest::nothing).toList();
    double none = water(assessment, List.of(), fan);
    assertThat(none).isPositive();
    assertThat(water(assessment, asked, fan)).isEqualTo(none);
  }

  private static double water(Assessment assessment, List<Finding> extract, Candidate fan) {
    return new MoistureShares(assessment.moisture(), extract, 1e-4, 20, 0.6).water(fan).likely();
  }

  private static Finding nothing(Finding f) {
    Optional<Figure> nothing =
        f.required()
            .map(r -> new Figure(r.id(), r.name(), Range.exactly(0), r.unit(), r.basis(), r.how()));
    return new Finding(
        f.id(),
        f.subject(),
        f.room(),
        f.verdict(),
        f.direction(),
        nothing,
        nothing,
        f.because(),
        f.settledBy(),
        f.sources());
  }

  /** Readings that leave less water than the list names leave each source its share of it. */
  private static double believed(String survey) {
    Assessment assessment = OptionsFixtures.assess(survey);
    double listed =
        assessment.moisture().items().stream().mapToDouble(i -> i.production().likely()).sum();
    return Math.min(1, new EffectStudy(assessment, OptionsFixtures.basis()).production() / listed);
  }

  @Test
  void sources_take_no_more_with_them_than_the_readings_leave() {
    assertThat(believed(FLAT)).isLessThan(0.6);
    Assessment assessment = OptionsFixtures.assess(FLAT);
    EffectStudy study = new EffectStudy(assessment, OptionsFixtures.basis());
    assertThat(study.believed()).isEqualTo(believed(FLAT));
    Figure water =
        studied(FLAT, "continuous-extract", "continuous-extract.bathroom")
            .effect()
            .moisture()
            .orElseThrow();
    assertThat(water.working().formula()).isEqualTo("f·o·b·Σ Gi");
    assertThat(water.working().inputs())
        .extracting(i -> i.symbol())
        .containsExactly("f", "o", "b", "Gi", "Gi");
    assertThat(water.working().inputs().get(2).value().likely()).isEqualTo(believed(FLAT));
    String wetter = FLAT.replaceAll("humidity: (60|62|65|70) %", "humidity: 88 %");
    assertThat(believed(wetter.replace("n50: 2 /h", "n50: 12 /h"))).isEqualTo(1);
    String empty =
        FLAT.replace("{adults: 2}", "{adults: 0}").replaceAll("moisture_sources: .*", "");
    assertThat(new EffectStudy(OptionsFixtures.assess(empty), OptionsFixtures.basis()).production())
        .as("what the readings imply, where nothing is listed")
        .isPositive();
  }

  /** A machine takes at most 0.6 of the water given off. */
  @Test
  void a_machine_takes_no_more_than_there_is() {
    Figure production = Production.of(OptionsFixtures.assess(FLAT).moisture());
    assertThat(studied(FLAT, "dehumidifier", "dehumidifier.home").water().high())
        .isLessThanOrEqualTo(0.6 * production.likely() + 1e-15);
  }

  @Test
  void a_local_repair_helps_its_own_place_only() {
    MeasureEffect lintel = effect(WRECK, "cold-bridge", "cold-bridge.living-lintel");
    SurfaceChange mended = place(lintel, "living-lintel").orElseThrow();
    assertThat(mended.monthsAfter().likely()).isLessThan(mended.monthsBefore());
    assertThat(mended.monthsAfter().low()).isLessThanOrEqualTo(mended.monthsAfter().likely());
    assertThat(mended.monthsAfter().high()).isGreaterThanOrEqualTo(mended.monthsAfter().likely());
    SurfaceChange reveal = place(lintel, "living-reveal").orElseThrow();
    assertThat(reveal.monthsAfter().likely()).isEqualTo(reveal.monthsBefore());
    assertThat(lintel.addedAir()).isEmpty();
    assertThat(lintel.excessChange()).isEmpty();
  }

  /** Insulating a wall covers the built-up wall of the room, not just the corner that was read. */
  @Test
  void insulating_walls_covers_the_surveyed_walls_of_the_room() {
    String walled =
        WRECK.replace(
            "    cold_spots:\n      - {id: living-corner",
            "    walls: [{id: living-wall, area: 8 m2, layers: [{material: brick, thickness: 215 mm}]}]\n"
                + "    cold_spots:\n      - {id: living-corner");
    MeasureEffect inside = effect(walled, "internal-wall-insulation", "internal-wall-insulation");
    SurfaceChange wall = place(inside, "living-wall").orElseThrow();
    assertThat(wall.monthsBefore()).isPositive();
    assertThat(wall.monthsAfter().likely()).isLessThan(wall.monthsBefore());
  }

  @Test
  void a_new_pane_replaces_what_was_read_on_the_old_one() {
    MeasureEffect triple = effect(WRECK, "triple-glazing", "triple-glazing.living-n");
    SurfaceChange pane = place(triple, "living-n").orElseThrow();
    assertThat(pane.glass()).isTrue();
    assertThat(pane.monthsAfter().likely()).isLessThan(pane.monthsBefore());
    assertThat(triple.wetGlassMonths().orElseThrow().likely())
        .isEqualTo(pane.monthsAfter().likely());
  }

  @Test
  void a_warmer_room_has_fewer_months_at_risk() {
    SurfaceChange wall =
        place(effect(WRECK, "radiator", "radiator.bedroom"), "bedroom-wall").orElseThrow();
    assertThat(wall.monthsAfter().likely()).isLessThanOrEqualTo(wall.monthsBefore());
  }

  @Test
  void openings_settle_what_falls_short_and_move_no_air_by_themselves() {
    MeasureEffect gap = effect(WRECK, "door-undercut", "door-undercut.hall");
    assertThat(gap.settles()).containsExactly("door.hall.living.transfer");
    assertThat(gap.addedAir()).isEmpty();
    assertThat(gap.notes()).anyMatch(n -> n.contains("moves no air by itself"));
    assertThat(effect(WRECK, "wall-ventilator", "wall-ventilator").settles()).isNotEmpty();
  }

  @Test
  void a_balanced_system_takes_the_place_of_the_fans_of_the_whole_home() {
    Studied balanced = studied(WRECK, "balanced-heat-recovery", "balanced-heat-recovery.home");
    assertThat(balanced.replaced())
        .extracting(f -> f.fan().id())
        .containsExactlyInAnyOrder("bath-fan", "dead-fan", "old-unit");
    assertThat(studied(WRECK, "positive-input", "positive-input.home").replaced()).isEmpty();
  }

  /** 25 l/s declared, 0.8 to 1 of it after repair, in place of the 6 l/s that were measured. */
  @Test
  void a_mended_duct_gives_most_of_the_declared_flow() {
    MeasureEffect duct = effect(WRECK, "duct-repair", "duct-repair.bath-fan");
    assertThat(duct.runningFlow().orElseThrow().likely() * 1000).isCloseTo(22.5, within(1e-9));
    assertThat(duct.extract()).singleElement().matches(f -> f.verdict() == Verdict.MEETS);
  }

  /**
   * 24 l/s through the slack duct, 0.9 of 25 l/s are 22.5: straight it moves no less than today.
   */
  @Test
  void a_mended_duct_takes_no_air_away() {
    String strong = WRECK.replace("measured_flow: {value: 6 l/s", "measured_flow: {value: 24 l/s");
    MeasureEffect duct = effect(strong, "duct-repair", "duct-repair.bath-fan");
    assertThat(duct.runningFlow().orElseThrow().likely() * 1000).isCloseTo(24, within(1e-9));
    assertThat(duct.addedAir().orElseThrow().likely()).isCloseTo(0, within(1e-9));
    assertThat(duct.runningFlow().orElseThrow().value().high() * 1000).isGreaterThanOrEqualTo(25);
  }

  @Test
  void without_any_cold_place_drier_air_is_the_effect() {
    String bare =
        OptionsFixtures.text("hidden-leak")
            .replace("kind: continuous extract", "kind: intermittent extract")
            .replace("45 l/s", "2 l/s");
    assertThat(studied(bare, "positive-input", "positive-input.home").works()).isTrue();
    ShownEffect none = new ShownEffect(0.01, false);
    MeasureEffect dry = effect(bare, "positive-input", "positive-input.home");
    assertThat(none.in(dry)).isTrue();
    MeasureEffect nothing = effect(FLAT, "lids-and-hood", "lids-and-hood.kitchen");
    assertThat(nothing.excessChange().orElseThrow().likely()).isNegative();
    assertThat(none.in(nothing)).isTrue();
    assertThat(new ShownEffect(0.01, true).in(nothing)).isFalse();
  }

  /** A survey of ten minutes: no readings, yet the surfaces are judged and measures compared. */
  @Test
  void a_home_without_readings_is_compared_by_the_humidity_that_was_assumed() {
    String unread = FLAT.replaceAll("    readings: \\[.*\\]\n", "").replace("0.72", "0.5");
    MeasureEffect effect = effect(unread, "balanced-heat-recovery", "balanced-heat-recovery.home");
    assertThat(effect.excessChange().orElseThrow().likely()).isNegative();
    assertThat(effect.excessAfter()).isEmpty();
    SurfaceChange corner = place(effect, "living-corner").orElseThrow();
    assertThat(corner.monthsBefore()).isEqualTo(12);
    assertThat(corner.monthsAfter().likely()).isLessThan(12);
  }

  /** 5 air changes an hour in a kitchen of 8 m² and 2.4 m: 96 m³/h, 26.7 l/s. */
  @Test
  void a_rate_in_air_changes_follows_the_volume_of_the_room() {
    String us =
        FLAT.replace("jurisdiction: england", "jurisdiction: ashrae-62-2")
            .replace(
                "use: kitchen\n    floor_area: 8 m2",
                "use: kitchen\n    height: 2.4 m\n    floor_area: 8 m2");
    MeasureEffect effect = effect(us, "continuous-extract", "continuous-extract.kitchen");
    assertThat(effect.runningFlow().orElseThrow().likely() * 1000)
        .isCloseTo(5 * 8 * 2.4 / 3.6, within(1e-6));
  }

  @Test
  void each_kind_of_wet_room_has_its_own_rate() {
    String rooms =
        FLAT
            + "  - {id: wc, use: wc, floor_area: 2 m2}\n"
            + "  - {id: utility, use: utility, floor_area: 4 m2}\n"
            + "  - {id: shower, use: shower room, floor_area: 4 m2}\n"
            + "  - {id: diner, use: kitchen-dining room, floor_area: 14 m2}\n";
    assertThat(running(rooms, "wc")).isCloseTo(6, within(1e-9));
    assertThat(running(rooms, "utility")).isCloseTo(30, within(1e-9));
    assertThat(running(rooms, "shower")).isCloseTo(15, within(1e-9));
    assertThat(running(rooms, "kitchen")).isCloseTo(60, within(1e-9));
    assertThat(running(rooms, "diner")).isCloseTo(60, within(1e-9));
  }

  private static double running(String survey, String room) {
    return effect(survey, "intermittent-extract", "intermittent-extract." + room)
            .runningFlow()
            .orElseThrow()
            .likely()
        * 1000;
  }

  @Test
  void the_duct_of_a_continuous_fan_or_a_hood_is_measured_by_its_own_rate() {
    String fan =
        WRECK.replace(
            "kind: intermittent extract, declared_flow: 25 l/s",
            "kind: continuous extract, declared_flow: 12 l/s");
    assertThat(asked(fan, "duct-repair.bath-fan")).isCloseTo(8, within(1e-9));
    String hood =
        WRECK.replace(
            "    moisture_sources: [{kind: cooking, fuel: gas",
            "    fans: [{id: hood, kind: extract hood, declared_flow: 60 l/s, measured_flow: {value: 10 l/s, instrument: hood}}]\n"
                + "    moisture_sources: [{kind: cooking, fuel: gas");
    assertThat(asked(hood, "duct-repair.hood")).isCloseTo(30, within(1e-9));
  }

  private static double asked(String survey, String id) {
    return effect(survey, "duct-repair", id).extract().get(0).required().orElseThrow().likely()
        * 1000;
  }

  /** A wet room without any fan lacks all of its extract; what is asked nowhere lacks nothing. */
  @Test
  void settled_are_only_findings_that_fall_short() {
    Assessment flat = OptionsFixtures.assess(FLAT);
    Candidate gap =
        new Placings(OptionsFixtures.assess(WRECK), OptionsFixtures.basis())
            .of(OptionsFixtures.measure("door-undercut"))
            .candidates()
            .get(0);
    assertThat(new Settled(flat.ventilation()).by(gap, List.of())).isEmpty();
  }
}
