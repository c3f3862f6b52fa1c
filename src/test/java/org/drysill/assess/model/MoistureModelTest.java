package org.drysill.assess.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

/**
 * Readings of all rooms put together, from surveys. Outdoors 3 °C and 85 %, indoors about 19 °C.
 */
class MoistureModelTest {
  private static final String OUTDOOR =
      "{at: 2026-01-22T09:30, temperature: 3 C, humidity: 85 %, instrument: th}";

  private static String survey(String dwelling, String outdoor, String rooms) {
    return """
        drysill: 1
        visit: {date: 2026-01-22, instruments: [{id: hood, kind: flow hood, flow_accuracy: 5 %},
          {id: th, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %}]}
        dwelling: {jurisdiction: england, floor_area: 70 m2, bedrooms: 2, storeys: 2,
          occupants: {adults: 2, children: 1}, DWELLING}
        outdoor_readings: [OUTDOOR]
        rooms:
        """
            .replace("DWELLING", dwelling)
            .replace("OUTDOOR", outdoor)
        + rooms;
  }

  private static String home(String dwelling, int bathHumidity) {
    return survey(
        dwelling,
        OUTDOOR,
        """
        - {id: hall, use: hall, readings: [READ 50 %]}
        - {id: kitchen, use: kitchen, doors: [{to: hall}], readings: [READ 54 %]}
        - {id: bath, use: bathroom, floor_area: 5 m2, doors: [{to: hall}], readings: [READ BATH %]}
        - {id: living, use: living room, floor_area: 18 m2, doors: [{to: hall}], readings: [READ 51 %]}
        - {id: bed, use: bedroom, doors: [{to: hall}], readings: [READ 52 %]}
        - {id: study, use: study, doors: [{to: hall}]}
        """
            .replace("READ", "{at: 2026-01-22T10:00, instrument: th, temperature: 19 C, humidity:")
            .replace(" %]", " %}]")
            .replace("BATH", Integer.toString(bathHumidity)));
  }

  private static final String UNMEASURED = "airtightness: {n50: 5..14 /h}";

  private static MoistureModelResult model(String survey) {
    return Chain.of(survey).assess();
  }

  private static ModelledRoom room(MoistureModelResult model, String id) {
    return model.rooms().stream().filter(r -> r.room().equals(id)).findFirst().orElseThrow();
  }

  private static FittedUnknown unknown(MoistureModelResult model, String id) {
    return model.unknowns().stream()
        .filter(u -> u.after().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void rooms_that_fit_each_other_are_explained() {
    MoistureModelResult model = model(home(UNMEASURED, 55));
    assertThat(model.silent()).isEmpty();
    assertThat(model.unexplained()).isEmpty();
    assertThat(model.rooms()).hasSize(6);
    for (ModelledRoom room : model.rooms()) {
      if (room.measured().isPresent()) {
        assertThat(room.modelled().likely())
            .isCloseTo(room.measured().get().likely(), within(0.001));
        assertThat(room.finding().verdict()).isEqualTo(Verdict.MEETS);
      }
    }
    assertThat(room(model, "study").finding().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(room(model, "study").missByDeviations()).isEmpty();
    double sum = model.rooms().stream().mapToDouble(r -> r.water().likely()).sum();
    assertThat(sum).isCloseTo(unknown(model, "model.water").after().likely(), within(1e-9));
  }

  /** A reading of 19 °C and 50 %: 1098.6 − 643.9 Pa over 461.5 × 292.15 K is 3.37 g/m³. */
  @Test
  void readings_are_counted_at_the_temperature_of_the_home() {
    double excess = room(model(home(UNMEASURED, 55)), "hall").measured().orElseThrow().likely();
    assertThat(excess).isCloseTo(0.00337, within(0.00001));
  }

  @Test
  void a_room_that_the_others_do_not_explain_is_told_and_left_out() {
    MoistureModelResult wet = model(home(UNMEASURED, 99));
    assertThat(wet.unexplained()).extracting(ModelledRoom::room).containsExactly("bath");
    Finding finding = room(wet, "bath").finding();
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding.because()).contains("holds more water").contains("showered");
    assertThat(finding.settledBy().orElseThrow()).contains("bath, windows shut");
    assertThat(room(wet, "bath").missByDeviations().orElseThrow()).isGreaterThan(3.5);
    double without = unknown(model(home(UNMEASURED, 55)), "model.water").after().likely();
    assertThat(unknown(wet, "model.water").after().likely())
        .isCloseTo(without, within(0.15 * without));
  }

  @Test
  void a_room_that_is_too_dry_is_told_likewise() {
    MoistureModelResult dry = model(home(UNMEASURED, 31));
    assertThat(dry.unexplained()).extracting(ModelledRoom::room).containsExactly("bath");
    assertThat(room(dry, "bath").finding().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(room(dry, "bath").finding().because()).contains("A window that stood open");
  }

  @Test
  void readings_alone_fix_water_over_air() {
    MoistureModelResult model = model(home(UNMEASURED, 55));
    assertThat(model.together().orElseThrow().likely()).isGreaterThan(0.6);
    Finding split = model.split().orElseThrow();
    assertThat(split.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(split.because()).contains("not either alone");
    assertThat(split.settledBy().orElseThrow()).contains("air leakage");
    assertThat(unknown(model, "model.water").narrowed()).isTrue();
  }

  @Test
  void measured_air_lets_the_readings_tell_the_water() {
    String tight = "airtightness: {n50: 0.4 /h}";
    String fan =
        ", fans: [{id: mvhr, kind: balanced heat recovery, run: continuous,"
            + " measured_flow: {value: 30 l/s, instrument: hood}}]}";
    String text = home(tight, 55).replace("doors: [{to: hall}]}", "doors: [{to: hall}]" + fan);
    MoistureModelResult model = model(text);
    double together = model.together().orElseThrow().likely();
    assertThat(together).isBetween(-0.1, 0.3);
    assertThat(model.split().orElseThrow().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(model.split().orElseThrow().settledBy().orElseThrow()).contains("loggers");
    assertThat(together)
        .isLessThan(model(home(UNMEASURED, 55)).together().orElseThrow().likely() - 0.3);
  }

  @Test
  void asks_for_the_flow_of_a_fan_where_that_is_the_doubt() {
    String fan =
        ", fans: [{id: piv, kind: positive input, run: continuous, declared_flow: 30 l/s,"
            + " duct: {length: 4 m, material: slack flexible}}]}";
    String text =
        home("airtightness: {n50: 0.5 /h}", 55)
            .replace("doors: [{to: hall}]}", "doors: [{to: hall}]" + fan);
    assertThat(split(Chain.of(text), Basis.ASSUMED)).contains("Measure the flow of the positive");
  }

  @Test
  void asks_for_carbon_dioxide_where_leaks_were_measured() {
    assertThat(split(Chain.of(home(UNMEASURED, 55)), Basis.MEASURED)).contains("carbon dioxide");
  }

  /** The next reading where water and air were read as one. */
  private static String split(Chain chain, Basis airtightness) {
    FittedHome fit = fit(chain);
    Figure water = chain.moisture().itemised();
    Figure air = chain.air().wholeHome();
    return new SplitFinding(fit, airtightness)
        .of(
            new ModelFigures(fit).together(0.9, water, air),
            water,
            air,
            Chain.RULES.defaults().together())
        .settledBy()
        .orElseThrow();
  }

  private static FittedHome fit(Chain chain) {
    VisitAir visit = new VisitAir(chain.humidity().home().orElseThrow(), chain.humidity());
    HomeModel model = chain.believed();
    return new FittedHome(
        model,
        Reading.all(model.layout(), visit, chain.humidity().home().orElseThrow().temperature()),
        0.003,
        Chain.RULES.defaults());
  }

  @Test
  void a_single_room_is_water_over_air() {
    String one =
        survey(
            "airtightness: {n50: 10 /h}",
            OUTDOOR,
            "- {id: room, use: living room, floor_area: 40 m2, readings: [{at: 2026-01-22T10:00,"
                + " temperature: 19 C, humidity: 50 %, instrument: th}]}\n");
    Chain chain = Chain.of(one);
    HomeModel model = chain.believed();
    double[] z = new double[model.unknowns().count()];
    assertThat(model.excess(z)[0])
        .isCloseTo(
            chain.moisture().itemised().likely() / chain.air().wholeHome().likely(), within(1e-12));
    MoistureModelResult result = chain.assess();
    assertThat(result.unknowns())
        .extracting(u -> u.after().id())
        .containsExactly("model.water", "model.air", "model.leaks");
    assertThat(result.assumptions()).extracting(Assumption::id).doesNotContain("model.door");
  }

  @Test
  void wet_panes_take_water_out_of_the_air() {
    String panes =
        home(UNMEASURED, 55)
            .replace(
                "doors: [{to: hall}]}",
                "doors: [{to: hall}], windows: [{id: w1, width: 1.5 m, height: 1.2 m, glazing:"
                    + " single}, {id: w2, glazing: single},"
                    + " {id: w3, width: 1 m, height: 1 m, glazing: double 12 mm}]}");
    MoistureModelResult model = model(panes);
    assertThat(model.glass().orElseThrow().likely()).isNotNegative();
    assertThat(model.assumptions()).extracting(Assumption::id).contains("model.glass_share");
    assertThat(model(home(UNMEASURED, 55)).glass()).isEmpty();
    HomeModel wet = Chain.of(panes).believed();
    double[] z = new double[wet.unknowns().count()];
    z[Unknowns.WATER] = 3;
    assertThat(wet.settling(z)).isPositive();
    double without = Chain.of(home(UNMEASURED, 55)).believed().excess(z)[5];
    assertThat(wet.excess(z)[5]).isLessThan(without);
  }

  /** Nobody lives there: what is given off is in the rooms of its sources, elsewhere nothing. */
  @Test
  void an_empty_home_has_rooms_without_water() {
    String empty =
        home(UNMEASURED, 55)
            .replace("occupants: {adults: 2, children: 1}", "occupants: {adults: 0}")
            .replace(
                "use: kitchen,", "use: kitchen, moisture_sources: [{kind: leak, rate: 2 kg/day}],")
            .replace("- {id: study, use: study,", "- {id: landing, use: hall,")
            .replace("{id: hall, use: hall,", "{id: hall, use: hall, doors: [{to: landing}],");
    MoistureModelResult model = model(empty);
    assertThat(room(model, "hall").water().value()).isEqualTo(Range.exactly(0));
    assertThat(room(model, "kitchen").water().likely()).isPositive();
  }

  @Test
  void what_is_left_out_is_no_input() {
    FittedUnknown water = unknown(model(home(UNMEASURED, 99)), "model.water");
    assertThat(water.after().working().inputs())
        .extracting(i -> i.figure().orElseThrow())
        .contains("model.room.hall.measured")
        .doesNotContain("model.room.bath.measured");
  }

  /** A fan that is known exactly is no unknown; leaks are the doubt. */
  @Test
  void a_fan_that_is_known_is_not_asked_for() {
    String fan =
        ", fans: [{id: f, kind: continuous extract, run: continuous, "
            + " measured_flow: {value: 8 l/s, instrument: hood}}]}";
    String text =
        home(UNMEASURED, 55)
            .replace("flow_accuracy: 5 %", "flow_accuracy: 0 %")
            .replace("doors: [{to: hall}]}", "doors: [{to: hall}]" + fan);
    assertThat(model(text).unknowns())
        .extracting(u -> u.after().id())
        .doesNotContain("model.fan.f");
    assertThat(split(Chain.of(text), Basis.ASSUMED)).contains("air leakage");
  }

  /** Halls alone: an open way and no door. */
  @Test
  void an_open_way_is_no_door() {
    String halls =
        survey(
            UNMEASURED,
            OUTDOOR,
            """
            - {id: hall, use: hall, doors: [{to: landing}], readings: [{at: 2026-01-22T10:00, instrument: th, temperature: 19 C, humidity: 50 %}]}
            - {id: landing, use: hall}
            """);
    assertThat(model(halls).unknowns())
        .extracting(u -> u.after().id())
        .containsExactly("model.water", "model.air", "model.leaks");
  }

  @Test
  void is_silent_where_readings_cannot_tell() {
    String unread = home(UNMEASURED, 55).replaceAll(", readings: .*", "}");
    assertThat(model(unread).silent().orElseThrow()).contains("No humidity was read");
    String alone = home(UNMEASURED, 55).replace(", humidity: 85 %, instrument: th}]", "}]");
    assertThat(model(alone).silent().orElseThrow()).contains("both read outdoors");
    String dry = home(UNMEASURED, 35).replaceAll("humidity: 5[0-9] %", "humidity: 32 %");
    assertThat(model(dry).silent().orElseThrow()).contains("so little more vapour");
    assertThat(model(dry).rooms()).isEmpty();
    assertThat(model(dry).unexplained()).isEmpty();
  }

  @Test
  void is_silent_without_air_or_water() {
    Chain chain = Chain.of(home(UNMEASURED, 55));
    ProvidedAir air = chain.air();
    Figure none = HomeFixtures.figure("none", Range.exactly(0), Unit.AIRFLOW);
    ProvidedAir without =
        new ProvidedAir(
            air.wholeHome(),
            air.byFans(),
            air.supply(),
            air.extract(),
            none,
            Optional.empty(),
            none,
            none,
            air.ventilatorsAtTestPressure(),
            air.airChange(),
            air.fans(),
            air.balance(),
            air.assumptions());
    assertThat(silent(chain, without, chain.moisture())).contains("No air through leaks");
    MoistureResult water = chain.moisture();
    MoistureResult dry =
        new MoistureResult(
            List.of(),
            HomeFixtures.figure("none", Range.exactly(0), Unit.MASS_RATE),
            water.implied(),
            water.balance(),
            water.finding(),
            List.of(),
            List.of());
    assertThat(silent(chain, air, dry)).contains("no source of water");
  }

  private static String silent(Chain chain, ProvidedAir air, MoistureResult moisture) {
    return MoistureModelAssessor.assess(
            chain.home(),
            new AirFound(air, List.of()),
            chain.humidity(),
            moisture,
            chain.surfaces(),
            Chain.RULES)
        .silent()
        .orElseThrow();
  }

  @Test
  void every_figure_has_a_working_and_a_name() {
    MoistureModelResult model = model(home(UNMEASURED, 55));
    for (ModelledRoom room : model.rooms()) {
      assertThat(room.modelled().working().inputs()).isNotEmpty();
      assertThat(room.water().working().inputs()).isNotEmpty();
      room.measured().ifPresent(m -> assertThat(m.working().inputs()).hasSize(2));
    }
    for (FittedUnknown unknown : model.unknowns()) {
      assertThat(unknown.after().working().note().orElseThrow()).contains("95 of 100");
      assertThat(unknown.before().working().formula()).isNotBlank();
    }
    assertThat(model.together().orElseThrow().working().inputs()).hasSize(2);
    List<String> ids = model.unknowns().stream().map(u -> u.after().id()).toList();
    assertThat(ids).containsExactly("model.water", "model.air", "model.leaks", "model.doors");
  }

  @Test
  void a_reading_keeps_the_errors_of_its_instruments_apart() {
    Chain chain = Chain.of(home(UNMEASURED, 55));
    VisitAir visit = new VisitAir(chain.humidity().home().orElseThrow(), chain.humidity());
    Reading reading =
        Reading.all(
                chain.believed().layout(),
                visit,
                chain.humidity().home().orElseThrow().temperature())
            .get(0);
    Range bounds = reading.measured().value();
    double whole = (bounds.high() - bounds.low()) / 2 / Math.sqrt(3);
    assertThat(Math.hypot(reading.outdoorError(), reading.instrumentError()))
        .isCloseTo(whole, within(1e-9));
    assertThat(reading.instrumentError()).isGreaterThan(reading.outdoorError());
  }
}
