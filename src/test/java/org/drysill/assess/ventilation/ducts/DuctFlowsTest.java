package org.drysill.assess.ventilation.ducts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.provided.Provision;
import org.drysill.physics.Range;
import org.drysill.survey.FanKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Fans with a curve and a duct, and stacks. Losses of defaults/ventilation.yaml. */
class DuctFlowsTest {
  private static final String CURVE =
      "fan_curve: [{flow: 0 l/s, pressure: 45 Pa}, {flow: 15 l/s, pressure: 30 Pa},"
          + " {flow: 26 l/s, pressure: 0 Pa}]";
  private static final String SLACK =
      "diameter: 100 mm, length: 2500 mm, bends: 2, material: slack flexible";
  private static final String SEEN =
      ", cowl: wall grille, bend: swept, grille: none, backdraught_shutter: no";

  private static ProvidedAir air(String keys) {
    return Provision.of(
        VentilationFixtures.home(
            "england",
            "floor_area: 84, volume: 200, heating: {setpoint: 19 C}",
            "- {id: bath, use: bathroom, fans: [{id: fan, name: The fan, " + keys + "}]}"),
        VentilationFixtures.DEFAULTS,
        Map.of());
  }

  private static FanFlow fan(String keys) {
    return air(keys).fans().get(0);
  }

  private static FanFlow ducted(String duct) {
    return fan(
        "kind: intermittent extract, declared_flow: 26 l/s, " + CURVE + ", duct: {" + duct + "}");
  }

  private static List<Assumption> assumptions(ProvidedAir air) {
    return air.assumptions().stream().filter(a -> a.id().startsWith("fan.fan.")).toList();
  }

  /** The three points of DuctSystemTest: m 10, 7, 4; K 4.5, 3.15, 1.8. */
  @Test
  void the_flow_of_a_fan_with_curve_and_duct_is_calculated() {
    FanFlow fan = ducted(SLACK + SEEN);
    Range flow = fan.running().value();
    assertThat(flow.low() * 1000).isCloseTo(14.5478, within(1e-4));
    assertThat(flow.likely() * 1000).isCloseTo(16.2816, within(1e-4));
    assertThat(flow.high() * 1000).isCloseTo(18.7197, within(1e-4));
    assertThat(fan.running().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(fan.derating()).isEmpty();
    assertThat(fan.stated()).isTrue();
    FanAtWork work = fan.atWork().orElseThrow();
    assertThat(work.flow()).isSameAs(fan.running());
    assertThat(work.pressure().likely()).isCloseTo(26.5046, within(1e-3));
    assertThat(work.friction().likely()).isCloseTo(18.3824, within(1e-3));
    assertThat(work.pressure().likely())
        .isCloseTo(
            work.friction().likely() + work.bends().likely() + work.ends().likely(), within(1e-9));
  }

  @Test
  void the_working_tells_the_duct_and_the_pressure_by_part() {
    FanAtWork work = ducted(SLACK + SEEN).atWork().orElseThrow();
    assertThat(work.flow().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("D", "L", "ε", "m", "K_bends", "K_ends", "Δp");
    assertThat(work.flow().working().note().orElseThrow())
        .contains("15 l/s at 30 Pa")
        .contains("clean fan")
        .doesNotContain("last point");
    assertThat(work.flow().working().sources()).hasSizeGreaterThan(2);
    assertThat(work.pressure().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("Δp_friction", "Δp_bends", "Δp_ends");
    assertThat(
            ducted("diameter: 400 mm, length: 0, bends: 0, material: smooth plastic, cowl: none")
                .running()
                .working()
                .note()
                .orElseThrow())
        .contains("last point of the curve");
  }

  @Test
  void measured_beats_calculated() {
    FanFlow fan =
        fan(
            "kind: intermittent extract, measured_flow: {value: 9 l/s, instrument: hood}, "
                + CURVE
                + ", duct: {"
                + SLACK
                + SEEN
                + "}");
    assertThat(fan.running().likely()).isCloseTo(0.009, within(1e-12));
    assertThat(fan.atWork()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "length: 2500 mm, bends: 2, material: slack flexible, cowl: none | inner diameter",
        "diameter: 0, length: 2500 mm, bends: 2, material: slack flexible, cowl: none | inner diameter",
        "diameter: 100 mm, bends: 2, material: slack flexible, cowl: none | the length",
        "diameter: 100 mm, length: 1 m, material: slack flexible, cowl: none | number of bends",
        "diameter: 100 mm, length: 1 m, bends: 0, cowl: none | the material",
        "diameter: 100 mm, length: 1 m, bends: 0, material: plastic | what covers the outer end"
      })
  void without_one_fact_of_the_duct_the_flow_is_derated_and_the_fact_is_asked_for(
      String duct, String fact) {
    ProvidedAir air =
        air("kind: intermittent extract, " + CURVE + ", duct: {" + duct + "}, run: continuous");
    FanFlow fan = air.fans().get(0);
    assertThat(fan.atWork()).isEmpty();
    assertThat(fan.running().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(fan.derating().orElseThrow()).contains("26 l/s");
    assertThat(assumptions(air))
        .singleElement()
        .satisfies(a -> assertThat(a.better()).contains(fact));
  }

  @Test
  void without_a_curve_it_and_the_whole_duct_are_asked_for() {
    ProvidedAir air = air("kind: continuous extract, run: continuous");
    assertThat(assumptions(air))
        .singleElement()
        .satisfies(
            a ->
                assertThat(a.better())
                    .contains(
                        "the curve that its maker declares, the inner diameter, the length, the"
                            + " number of bends, the material and what covers the outer end"));
    assertThat(
            assumptions(
                air(
                    "kind: balanced heat recovery, declared_flow: 40 l/s, run: continuous, "
                        + CURVE)))
        .singleElement()
        .satisfies(a -> assertThat(a.better()).doesNotContain("calculated"));
  }

  @Test
  void what_was_not_seen_of_the_duct_widens_the_range_and_is_listed() {
    ProvidedAir seen =
        air(
            "kind: intermittent extract, run: continuous, "
                + CURVE
                + ", duct: {"
                + SLACK
                + SEEN
                + "}");
    ProvidedAir unseen =
        air(
            "kind: intermittent extract, run: continuous, "
                + CURVE
                + ", duct: {"
                + SLACK
                + ", cowl: wall grille}");
    Figure wide = unseen.fans().get(0).running();
    Figure narrow = seen.fans().get(0).running();
    assertThat(wide.value().low()).isLessThan(narrow.value().low());
    assertThat(wide.value().high()).isEqualTo(narrow.value().high());
    assertThat(assumptions(seen)).isEmpty();
    assertThat(assumptions(unseen))
        .singleElement()
        .satisfies(
            a ->
                assertThat(a.assumed())
                    .contains("how its bends are made")
                    .contains("a grille at its end in the room")
                    .contains("a backdraught shutter"));
  }

  @Test
  void each_thing_in_the_way_takes_air() {
    String straight =
        "diameter: 100 mm, length: 1 m, bends: 0, material: galvanised steel, grille: none, backdraught_shutter: no, cowl: ";
    double open = ducted(straight + "none").running().likely();
    assertThat(ducted(straight + "wall grille").running().likely()).isLessThan(open);
    assertThat(ducted(straight + "roof cowl").running().likely()).isLessThan(open);
    double flaps = ducted(straight + "gravity flap").running().likely();
    assertThat(flaps).isLessThan(ducted(straight + "wall grille").running().likely());
    String bent =
        "diameter: 100 mm, length: 1 m, bends: 1, material: taut flexible, cowl: none, grille: wall grille, backdraught_shutter: yes, bend: ";
    double swept = ducted(bent + "swept").running().likely();
    assertThat(swept).isLessThan(open);
    assertThat(ducted(bent + "sharp").running().likely()).isLessThan(swept);
    assertThat(
            ducted(
                    "diameter: 100 mm, length: 1 m, bends: 0, material: metal sleeve, grille: none, cowl: gravity flap")
                .running()
                .value())
        .as("flaps need no shutter")
        .isEqualTo(ducted(straight + "gravity flap").running().value());
  }

  @Test
  void a_very_narrow_rough_duct_is_as_rough_as_the_law_allows() {
    FanFlow fan =
        ducted("diameter: 30 mm, length: 1 m, bends: 0, material: taut flexible, cowl: none");
    assertThat(fan.running().likely()).isPositive().isLessThan(0.005);
  }

  /** 5 °C outdoors all year; entry 0.5, grille outside 1..5, no bend: DuctSystemTest. */
  @Test
  void a_stack_draws_by_warmth_what_its_duct_lets_through() {
    FanFlow fan =
        fan(
            "kind: passive stack, duct: {diameter: 125 mm, length: 5 m, bends: 0,"
                + " material: galvanised steel, cowl: roof cowl, grille: none,"
                + " backdraught_shutter: no}");
    assertThat(fan.running().value().low() * 1000).isCloseTo(10.2516, within(1e-3));
    assertThat(fan.running().value().likely() * 1000).isCloseTo(12.2424, within(1e-3));
    assertThat(fan.running().value().high() * 1000).isCloseTo(16.2395, within(1e-3));
    assertThat(fan.running().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(fan.running().working().inputs())
        .extracting(Input::name)
        .contains("height, taken as its length");
    assertThat(fan.extract().likely()).isEqualTo(fan.running().likely());
  }

  @Test
  void the_height_of_a_stack_is_what_draws() {
    String stack =
        "kind: passive stack, duct: {diameter: 125 mm, length: 6 m, bends: 2, cowl: none,"
            + " material: plastic, height: ";
    FanFlow low = fan(stack + "3 m}");
    FanFlow high = fan(stack + "5 m}");
    assertThat(low.running().likely()).isLessThan(high.running().likely());
    assertThat(high.running().working().inputs()).extracting(Input::name).contains("height");
  }

  @Test
  void a_stack_of_unknown_duct_keeps_the_planning_range_and_says_what_to_note() {
    ProvidedAir air = air("kind: passive stack, run: continuous, duct: {diameter: 125 mm}");
    assertThat(air.fans().get(0).running().likely()).isCloseTo(0.011, within(1e-9));
    assertThat(assumptions(air))
        .singleElement()
        .satisfies(
            a -> assertThat(a.better()).contains("of its duct the length").doesNotContain("curve"));
  }

  @Test
  void a_stack_does_not_draw_where_it_is_no_warmer_inside() {
    ProvidedAir air =
        Provision.of(
            VentilationFixtures.home(
                "england",
                "floor_area: 84, heating: {setpoint: 5 C}",
                "- {id: bath, use: bathroom, fans: [{id: fan, kind: passive stack, duct: {diameter:"
                    + " 125 mm, length: 5 m, bends: 0, material: plastic, cowl: none}}]}"),
            VentilationFixtures.DEFAULTS,
            Map.of());
    assertThat(air.fans().get(0).atWork()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FanKind.class)
  void a_curve_alone_tells_nothing_of_a_system_of_ducts(FanKind kind) {
    FanFlow fan = fan("kind: " + kind.word() + ", " + CURVE + ", duct: {" + SLACK + SEEN + "}");
    assertThat(fan.atWork().isPresent())
        .isEqualTo(DuctFlows.hasOneDuct(kind) || kind == FanKind.PASSIVE_STACK);
  }
}
