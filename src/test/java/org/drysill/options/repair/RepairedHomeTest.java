package org.drysill.options.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.model.HomeState;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.model.ZonedHome.Zone;
import org.drysill.options.FirstThing;
import org.drysill.options.OptionsBasis;
import org.drysill.options.OptionsResult;
import org.drysill.options.RankedMeasure;
import org.drysill.options.Repaired;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Studied;
import org.drysill.options.site.Placings;
import org.drysill.physics.Range;
import org.drysill.survey.FanKind;
import org.junit.jupiter.api.Test;

class RepairedHomeTest {
  private static final String FLAT = OptionsFixtures.text("small-flat");
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final double KG_PER_DAY = 1 / 86_400.0;

  private static final String LEAKING =
      FLAT.replace(
          "{kind: cooking, fuel: electricity, lids_and_hood: no}",
          "{kind: cooking, fuel: electricity, lids_and_hood: no},"
              + " {kind: leak, rate: 0.5..2.5 kg/day}");

  /** The fan of the bathroom stands still. */
  private static final String DEAD =
      FLAT.replace(
          "kind: intermittent extract, measured_flow: {value: 6 l/s, instrument: hood}",
          "kind: fitted but not working");

  private static List<Studied> repairs(Assessment today, String... measures) {
    EffectStudy effects = new EffectStudy(today, BASIS);
    return List.of(measures).stream()
        .flatMap(m -> BASIS.catalogue().measure(m).stream())
        .flatMap(m -> new Placings(today, BASIS).of(m).candidates().stream())
        .flatMap(c -> effects.of(c).stream())
        .toList();
  }

  private static RepairedHome mended(String survey, String... measures) {
    Assessment today = OptionsFixtures.assess(survey);
    return RepairedHome.of(today, BASIS, repairs(today, measures)).orElseThrow();
  }

  /** Readings that leave less water than the list names leave each source its share of it. */
  private static double believed(Assessment today) {
    double listed =
        today.moisture().items().stream().mapToDouble(i -> i.production().likely()).sum();
    return new EffectStudy(today, BASIS).production() / listed;
  }

  private static double water(ZonedHome home) {
    return home.zones().stream().mapToDouble(Zone::waterKgS).sum();
  }

  private static OptionsResult study(String survey) {
    return OptionsFixtures.study(survey);
  }

  @Test
  void a_home_without_defects_stays_as_it_is() {
    Assessment today = OptionsFixtures.assess(FLAT);
    assertThat(RepairedHome.of(today, BASIS, List.of())).isEmpty();
    assertThat(study(FLAT).repaired()).isEmpty();
  }

  /** Then the air of all rooms counts, and no mean is taken over none. */
  @Test
  void a_home_of_which_no_room_is_heated_is_mended_too() {
    String cold = LEAKING.replaceAll("use: [a-z]+", "use: cellar");
    assertThat(OptionsFixtures.assess(cold).home().rooms()).noneMatch(r -> r.heated());
    assertThat(study(cold).repaired()).isPresent();
  }

  @Test
  void a_mended_leak_takes_its_water_out_of_its_room_and_no_more() {
    RepairedHome home = mended(LEAKING, "leak-repair");
    ZonedHome today = home.today().model().zones().orElseThrow();
    ZonedHome then = home.then().model().zones().orElseThrow();
    double listed = new EffectStudy(home.today(), BASIS).water().likely();
    double leak = 1.5 * KG_PER_DAY * believed(home.today());
    double gone = water(today) * leak / listed;
    assertThat(water(then)).isCloseTo(water(today) - gone, within(1e-12));
    for (int i = 0; i < today.zones().size(); i++) {
      boolean kitchen = today.zones().get(i).room().equals("kitchen");
      assertThat(then.zones().get(i).waterKgS() < today.zones().get(i).waterKgS())
          .isEqualTo(kitchen);
    }
    assertThat(new EffectStudy(home.then(), BASIS).water().likely())
        .isCloseTo(listed - leak, within(1e-12));
    assertThat(home.then().moisture().items())
        .filteredOn(i -> i.kind().equals("leak"))
        .allMatch(i -> i.production().likely() == 0);
  }

  @Test
  void every_room_is_drier_and_none_is_colder_for_it() {
    RepairedHome home = mended(LEAKING, "leak-repair");
    home.then()
        .vapour()
        .rooms()
        .forEach(
            (room, vapour) ->
                assertThat(vapour.excess().likely())
                    .as(room)
                    .isLessThan(home.today().vapour().of(room).orElseThrow().excess().likely()));
    assertThat(home.then().humidity().home().orElseThrow().excess().likely())
        .isLessThan(home.today().humidity().home().orElseThrow().excess().likely());
    assertThat(home.then().home()).isEqualTo(home.today().home());
    assertThat(home.then().ventilation()).isSameAs(home.today().ventilation());
  }

  @Test
  void the_most_likely_state_is_the_likely_home_and_a_bigger_leak_dries_more() {
    Assessment then = mended(LEAKING, "leak-repair").then();
    double[] z = new double[then.model().states().unknowns()];
    HomeState likely = then.model().states().at(z);
    assertThat(water(likely.zones()))
        .isCloseTo(water(then.model().zones().orElseThrow()), within(1e-12));
    assertThat(likely.excess()).allSatisfy(x -> assertThat(x).isCloseTo(1, within(1e-9)));
    z[z.length - 1] = 1.5;
    HomeState big = then.model().states().at(z);
    z[z.length - 1] = -1.5;
    HomeState small = then.model().states().at(z);
    assertThat(water(big.zones())).isLessThan(water(likely.zones()));
    assertThat(water(small.zones())).isGreaterThan(water(likely.zones()));
    assertThat(big.excess().get(0)).isLessThan(small.excess().get(0));
    assertThat(then.model().states().repaired())
        .containsExactly(Optional.of("water given off by the leak, Kitchen"));
  }

  /** Nobody lives there and nothing else gives water off. */
  @Test
  void a_leak_that_is_all_the_water_there_is_leaves_none_or_all() {
    String any =
        FLAT.replace("{adults: 2}", "{adults: 0}")
            .replaceAll("moisture_sources: .*", "")
            .replace(
                "use: kitchen",
                "use: kitchen\n    moisture_sources: [{kind: leak, rate: 0.05..30 kg/day}]");
    RepairedHome home = mended(any, "leak-repair");
    double[] z = new double[home.then().model().states().unknowns()];
    assertThat(water(home.then().model().states().at(z).zones())).isZero();
    z[z.length - 1] = -2.2;
    HomeState none = home.then().model().states().at(z);
    double[] found = new double[z.length - 1];
    assertThat(none.zones()).isEqualTo(home.today().model().states().at(found).zones());
    assertThat(none.excess()).allMatch(Double::isFinite);
    assertThat(study(any).repaired()).isPresent();
  }

  @Test
  void what_is_not_known_of_the_leak_widens_what_the_air_holds() {
    String known = LEAKING.replace("0.5..2.5", "1.5");
    Range sure =
        mended(known, "leak-repair").then().humidity().home().orElseThrow().excess().value();
    Range unsure =
        mended(LEAKING, "leak-repair").then().humidity().home().orElseThrow().excess().value();
    assertThat(unsure.low() / unsure.likely()).isLessThan(sure.low() / sure.likely());
    assertThat(unsure.high() / unsure.likely()).isGreaterThan(sure.high() / sure.likely());
  }

  @Test
  void the_study_tells_what_is_taken_as_mended_and_counts_it_once() {
    OptionsResult options = study(LEAKING);
    Repaired repaired = options.repaired().orElseThrow();
    assertThat(repaired.asIf()).containsExactly("the leak in the Kitchen were mended");
    assertThat(repaired.staying())
        .anyMatch(s -> s.contains("Kitchen") && s.contains("as if that stayed"));
    FirstThing leak =
        options.first().stream().filter(f -> f.id().startsWith("leak-repair")).findFirst().get();
    assertThat(leak.effect().orElseThrow().moisture().orElseThrow().value().high())
        .isCloseTo(2.5 * KG_PER_DAY * believed(OptionsFixtures.assess(LEAKING)), within(1e-12));
    assertThat(leak.money()).isPresent();
    assertThat(options.ranked()).noneMatch(m -> m.measure().equals("leak-repair"));
    Repaired.Row water = repaired.rows().get(0);
    assertThat(water.today().unit()).isEqualTo(Unit.MASS_RATE);
    assertThat(water.today().likely() - water.then().likely())
        .isCloseTo(1.5 * KG_PER_DAY * believed(OptionsFixtures.assess(LEAKING)), within(1e-12));
    assertThat(repaired.rows())
        .extracting(r -> r.then().likely() <= r.today().likely())
        .containsOnly(true);
    assertThat(repaired.rows())
        .allSatisfy(r -> assertThat(r.then().working().formula()).isNotBlank());
  }

  @Test
  void a_leak_of_unknown_size_stays_in_the_ranking() {
    String unknown = FLAT + "    notes: A pipe behind the sink is leaking\n";
    OptionsResult options = study(unknown.replace("leaking", "leak"));
    OptionsResult without = study(FLAT);
    Repaired repaired = options.repaired().orElseThrow();
    assertThat(repaired.asIf()).isEmpty();
    assertThat(repaired.rows()).isEmpty();
    assertThat(repaired.staying()).hasSize(2);
    assertThat(repaired.unexplained()).isPresent();
    assertThat(repaired.unexplained().get().working().inputs()).hasSize(2);
    assertThat(options.ranked())
        .extracting(RankedMeasure::id)
        .isEqualTo(without.ranked().stream().map(RankedMeasure::id).toList());
  }

  @Test
  void what_stays_is_held_against_what_the_readings_do_not_explain() {
    String hidden = OptionsFixtures.text("hidden-leak");
    Repaired more =
        study(hidden.replace("  - id: bathroom", "    notes: leak at the window\n  - id: bathroom"))
            .repaired()
            .orElseThrow();
    assertThat(more.unexplained().orElseThrow().likely()).isPositive();
    assertThat(more.staying().get(1)).contains("more water than the listed sources give");
    Repaired blind =
        study(
                hidden
                    .replace("  - id: bathroom", "    notes: leak at the window\n  - id: bathroom")
                    .replaceAll("outdoor_readings: .*\n", ""))
            .repaired()
            .orElseThrow();
    assertThat(blind.unexplained()).isEmpty();
    assertThat(blind.staying().get(1)).contains("cannot tell");
  }

  @Test
  void a_fan_that_stood_still_runs_and_one_in_its_place_says_so() {
    RepairedHome home = mended(DEAD, "fan-repair");
    assertThat(home.then().ventilation().provided().extract().likely())
        .isCloseTo(0.015 * 2 / 24, within(1e-12));
    assertThat(home.then().ventilation().provided().wholeHome().likely())
        .isGreaterThan(home.today().ventilation().provided().wholeHome().likely());
    assertThat(home.then().ventilation().provided().balance().residual())
        .isCloseTo(0, within(1e-9));
    assertThat(home.then().ventilation().fan("old-fan").orElseThrow().fan().kind())
        .isEqualTo(FanKind.INTERMITTENT_EXTRACT);
    assertThat(home.then().home().room("bathroom").orElseThrow().room().fans().get(0).kind())
        .isEqualTo(FanKind.INTERMITTENT_EXTRACT);
    assertThat(home.then().ventilation().extract())
        .filteredOn(f -> f.room().equals(Optional.of("bathroom")))
        .isNotEmpty()
        .allMatch(f -> f.verdict() == Verdict.MEETS);
    OptionsResult options = study(DEAD);
    assertThat(options.repaired().orElseThrow().asIf())
        .containsExactly("the fan in the Bathroom ran again");
    assertThat(options.ranked())
        .filteredOn(m -> m.id().endsWith("extract.bathroom"))
        .isNotEmpty()
        .allMatch(m -> m.because().contains("plan both together (fan repair)"));
    assertThat(options.ranked())
        .filteredOn(m -> m.id().endsWith("extract.kitchen"))
        .isNotEmpty()
        .noneMatch(m -> m.because().contains("plan both together"));
  }

  @Test
  void its_flow_is_one_of_the_things_that_are_not_known() {
    Assessment then = mended(DEAD, "fan-repair").then();
    double[] z = new double[then.model().states().unknowns()];
    assertThat(then.model().states().isDoubtful("old-fan")).isTrue();
    assertThat(then.model().states().repaired()).containsExactly(Optional.empty());
    z[z.length - 1] = 1;
    assertThat(then.model().states().at(z).fan("old-fan")).isGreaterThan(1);
    z[z.length - 1] = 0;
    assertThat(then.model().states().at(z).fan("old-fan")).isCloseTo(1, within(1e-12));
  }

  @Test
  void without_readings_the_home_is_one_zone_and_its_fan_is_mended_too() {
    String unread =
        DEAD.replaceAll("outdoor_readings: .*\n", "").replaceAll("    readings: .*\n", "");
    RepairedHome home = mended(unread, "fan-repair");
    assertThat(home.today().model().zones()).isEmpty();
    assertThat(home.then().model().zones()).isEmpty();
    assertThat(home.then().humidity().home()).isEmpty();
    assertThat(home.then().vapour().rooms().get("living").excess().likely()).isPositive();
    assertThat(study(unread).repaired().orElseThrow().rows())
        .extracting(Repaired.Row::then)
        .extracting(Figure::unit)
        .contains(Unit.AIRFLOW, Unit.MASS_RATE);
  }

  @Test
  void an_excess_that_may_be_none_is_left_as_it_was_read() {
    String dry = DEAD.replaceAll("humidity: (60|65|70|62) %", "humidity: 32 %");
    RepairedHome home = mended(dry, "fan-repair");
    assertThat(home.then().humidity().home()).isEqualTo(home.today().humidity().home());
  }

  @Test
  void a_heater_without_a_flue_goes_with_the_caution_that_asks_for_it() {
    OptionsResult options =
        study(
            FLAT.replace(
                "  - id: bedroom",
                "    moisture_sources: [{kind: unflued heater, fuel: paraffin, power: 2 kW,"
                    + " hours_per_day: 3 h}]\n  - id: bedroom"));
    List<FirstThing> heaters =
        options.first().stream().filter(f -> f.cautions().contains("unflued-heater")).toList();
    assertThat(heaters).hasSize(1);
    assertThat(heaters.get(0).effect().orElseThrow().moisture()).isPresent();
    assertThat(heaters.get(0).money()).isPresent();
    assertThat(options.repaired().orElseThrow().asIf())
        .containsExactly("the heater without a flue in the Living were replaced");
  }

  @Test
  void a_dryer_that_blows_into_a_room_gets_a_duct_first() {
    OptionsResult options =
        study(
            FLAT.replace(
                "lids_and_hood: no}",
                "lids_and_hood: no}, {kind: tumble dryer without duct, loads_per_week: 4}"));
    assertThat(options.first()).extracting(FirstThing::id).containsExactly("dryer-duct.kitchen");
    assertThat(options.repaired().orElseThrow().asIf())
        .containsExactly("the tumble dryer in the Kitchen blew outside");
    assertThat(options.repaired().orElseThrow().staying()).isEmpty();
  }
}
