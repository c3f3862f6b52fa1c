package org.drysill.assess.ventilation;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;
import static org.drysill.assess.ventilation.VentilationFixtures.assessBy;
import static org.drysill.assess.ventilation.VentilationFixtures.comparison;
import static org.drysill.assess.ventilation.VentilationFixtures.finding;
import static org.drysill.assess.ventilation.VentilationFixtures.litres;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.ventilation.adequacy.PurgeOpening;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.physics.VentilationExamplesTest;
import org.drysill.physics.energy.FanEnergy;
import org.drysill.reference.DataFiles;
import org.drysill.reference.WorkedExample;
import org.drysill.reference.rules.Criterion;
import org.drysill.reference.rules.CriterionQuantity;
import org.drysill.reference.rules.FanClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked rows of {@code reference/ventilation_examples.csv} that concern rule sets, each run
 * from a small survey to the finding or comparison that a report would show. A row's label names
 * its document, and says {@code (memory)} where that was remembered; the rule set's own file says
 * for each value whether it was seen.
 */
class WorkedRuleRowsTest {
  private static final double MM2 = 1e6;
  private static final String HALL = "- {id: hall, use: hall}\n";

  /**
   * Rows, or single results of rows, that nothing in the program computes, each with the reason.
   */
  private static final Map<String, String> NOT_RUN =
      Map.ofEntries(
          entry(
              "E13",
              "a survey does not list the energy-saving works since the home was built, so nothing"
                  + " can be counted by Diagram 3.1"),
          entry(
              "E24.bedroom_m3_h",
              "supply by planned bed place: a survey does not count bed places of a room"),
          entry(
              "E28.reduced_kitchen_m3_h",
              "extract of one room by number of main rooms: rows of extract have one rate"));

  private static final Map<String, Function<WorkedExample, Map<String, Object>>> WORKED = worked();

  static List<WorkedExample> examples() {
    return WorkedExample.all().stream().filter(e -> WORKED.containsKey(e.id())).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void a_worked_row_comes_out_of_the_whole_run(WorkedExample example) {
    Map<String, Object> found = WORKED.get(example.id()).apply(example);
    assertThat(found.keySet()).isEqualTo(run(example));
    found.forEach((key, value) -> compare(example, key, value));
  }

  private static void compare(WorkedExample example, String key, Object value) {
    String printed = example.expected().get(key);
    if (value instanceof Double number) {
      assertThat(number)
          .as(key)
          .isCloseTo(Double.parseDouble(printed), within(example.allowance(printed)));
    } else {
      assertThat(printed).as(key).isEqualTo(value);
    }
  }

  /** The results of a row that are run. */
  private static Set<String> run(WorkedExample example) {
    return example.expected().keySet().stream()
        .filter(key -> !NOT_RUN.containsKey(example.id() + "." + key))
        .collect(Collectors.toSet());
  }

  @Test
  void what_is_not_run_here_or_in_physics_is_exactly_what_is_listed_with_a_reason() {
    Set<String> left = new TreeSet<>();
    for (WorkedExample example : WorkedExample.all()) {
      if (WORKED.containsKey(example.id())) {
        Set<String> keys = new TreeSet<>(example.expected().keySet());
        keys.removeAll(WORKED.get(example.id()).apply(example).keySet());
        keys.forEach(key -> left.add(example.id() + "." + key));
      } else if (!VentilationExamplesTest.ids().contains(example.id())) {
        left.add(example.id());
      }
    }
    assertThat(left).isEqualTo(NOT_RUN.keySet());
  }

  private static Map<String, Function<WorkedExample, Map<String, Object>>> worked() {
    Map<String, Function<WorkedExample, Map<String, Object>>> all = new LinkedHashMap<>();
    all.put("E01", e -> wholeHome(e, "number of bedrooms", "bedrooms"));
    all.put("E02", e -> wholeHome(e, "floor area", "floor area"));
    all.put("E03", e -> wholeHome(e, "number of bedrooms", "bedrooms"));
    all.put("E04", WorkedRuleRowsTest::oneHabitableRoom);
    all.put("E05", WorkedRuleRowsTest::continuousExtract);
    all.put("E06", WorkedRuleRowsTest::naturalVentilators);
    all.put("E07", WorkedRuleRowsTest::internalBathroom);
    all.put("E08", WorkedRuleRowsTest::ventilatorsWithContinuousExtract);
    all.put("E09", WorkedRuleRowsTest::purge);
    all.put("E10", WorkedRuleRowsTest::door);
    all.put("E11", WorkedRuleRowsTest::addedRoom);
    all.put("E12", WorkedRuleRowsTest::heatRecoveryInWetRooms);
    all.put("E14", WorkedRuleRowsTest::airChange);
    all.put("E16", WorkedRuleRowsTest::ashraeTotal);
    all.put("E17", e -> Map.of("L_s", litres(ask(e, "ashrae-62-2/2010"))));
    all.put("E18", e -> Map.of("Qinf_cfm", credit(e)));
    all.put("E19", e -> Map.of("Qfan_cfm", cfm(ask(tested(), "ashrae-62-2/credited"))));
    all.put("E21", WorkedRuleRowsTest::modelCode);
    all.put("E22", WorkedRuleRowsTest::categoryTwo);
    all.put("E23", WorkedRuleRowsTest::netherlands);
    all.put("E24", WorkedRuleRowsTest::norway);
    all.put("E25", WorkedRuleRowsTest::nordic);
    all.put("E26", WorkedRuleRowsTest::finland);
    all.put("E27", WorkedRuleRowsTest::germany);
    all.put("E28", WorkedRuleRowsTest::france);
    all.put("E29", WorkedRuleRowsTest::older);
    all.put("E38", WorkedRuleRowsTest::fanPower);
    all.put("E40", WorkedRuleRowsTest::ireland);
    all.put("E44", WorkedRuleRowsTest::criteria);
    all.put("E45", WorkedRuleRowsTest::windowReplacement);
    return all;
  }

  private static Map<String, Object> wholeHome(WorkedExample e, String term, String word) {
    VentilationResult result = assess("england", dwelling(e), HALL);
    Map<String, Object> found = new LinkedHashMap<>();
    found.put("l_s", litres(result.required().wholeHome().orElseThrow()));
    if (e.expected().containsKey("governs")) {
      found.put("governs", result.required().governedBy().equals(term) ? word : "another term");
    }
    if (e.expected().containsKey("floor_rule_l_s")) {
      found.put("floor_rule_l_s", litres(term(result, "floor area")));
    }
    return found;
  }

  private static Map<String, Object> oneHabitableRoom(WorkedExample e) {
    VentilationResult result =
        assess("england", "type: studio, bedrooms: 0, floor_area: " + e.in("floor_m2"), HALL);
    return Map.of(
        "l_s", litres(result.required().wholeHome().orElseThrow()),
        "floor_rule_l_s", litres(term(result, "floor area")));
  }

  private static Map<String, Object> continuousExtract(WorkedExample e) {
    String fan =
        "- {id: %1$s, use: %1$s, fans: [{id: f-%1$s, kind: continuous extract,"
            + " measured_flow: {value: %2$s l/s, instrument: hood}}]}\n";
    VentilationResult result =
        assess(
            "england",
            dwelling(e),
            fan.formatted("kitchen", 13) + fan.formatted("bathroom", 8) + fan.formatted("wc", 6));
    double rates =
        Stream.of("kitchen", "bathroom", "wc")
            .mapToDouble(id -> litres(required(finding(result, "room." + id + ".extract"))))
            .sum();
    Finding total = finding(result, "ventilation.extract.total");
    double asked = litres(required(total));
    return Map.of(
        "sum_high_rates_l_s",
        rates,
        "required_continuous_total_l_s",
        asked,
        "shortfall_if_run_at_high_minimums_l_s",
        asked - litres(total.provided().orElseThrow()));
  }

  private static Map<String, Object> naturalVentilators(WorkedExample e) {
    String rooms = rooms(e, "windows: [{id: w-%s, background_ventilator: 8000 mm2}]");
    VentilationResult two = assess("england", "storeys: 2, " + dwelling(e, 84), rooms);
    VentilationResult one = assess("england", "storeys: 1, " + dwelling(e, 84), rooms);
    Verdict count = finding(two, "ventilation.background.count").verdict();
    return Map.of(
        "multi_storey_mm2", mm2(two),
        "single_storey_mm2", mm2(one),
        "min_count_ok", count == Verdict.MEETS ? "True" : "False");
  }

  private static Map<String, Object> internalBathroom(WorkedExample e) {
    VentilationResult result =
        assess(
            "england",
            "floor_area: 84",
            "- {id: bath, use: bathroom, floor_area: %s, height: %s, external_wall: no,"
                    .formatted(e.in("floor_m2"), e.in("height_m"))
                + " fans: [{id: fan, kind: intermittent extract, declared_flow: 15 l/s}]}");
    Figure asked = required(finding(result, "room.bath.extract"));
    double byAirChange =
        asked.working().inputs().stream()
            .filter(input -> input.name().contains("of the room"))
            .map(Working.Input::value)
            .mapToDouble(Range::likely)
            .findFirst()
            .orElseThrow();
    return Map.of("four_ach_l_s", byAirChange * 1000, "required_l_s", litres(asked));
  }

  private static Map<String, Object> ventilatorsWithContinuousExtract(WorkedExample e) {
    VentilationResult result =
        assess(
            "england",
            dwelling(e, 84),
            rooms(e, "windows: [{id: w-%s}]")
                + "- {id: wc, use: wc, fans: [{id: fan, kind: continuous extract}]}");
    return Map.of(
        "total_mm2",
        mm2(result),
        "min_number",
        required(finding(result, "ventilation.background.count")).likely());
  }

  private static Map<String, Object> purge(WorkedExample e) {
    return Map.of(
        "flow_l_s", litres(airing(e, 20).required().orElseThrow()),
        "area_15_30deg_m2", required(airing(e, 20).finding()).likely(),
        "area_30deg_m2", required(airing(e, 30).finding()).likely(),
        "area_lt15deg", airing(e, 14).finding().verdict() == Verdict.SHORT ? "fail" : "pass");
  }

  private static PurgeOpening airing(WorkedExample e, int degrees) {
    String room =
        "- {id: bed, use: bedroom, floor_area: %s, height: %s, windows: [{id: w, opening:"
            + " {kind: side-hung, width: 2 m, height: 2 m, angle: %s deg}}]}";
    return assess(
            "england",
            "floor_area: 84",
            room.formatted(e.in("floor_m2"), e.in("height_m"), degrees))
        .purge()
        .get(0);
  }

  /** The least gap with which the door meets, to a thousandth of a millimetre. */
  private static Map<String, Object> door(WorkedExample e) {
    int thousandths =
        IntStream.range(9000, 9500)
            .filter(gap -> transfer(e, gap / 1000.0).verdict() == Verdict.MEETS)
            .findFirst()
            .orElseThrow();
    return Map.of(
        "area_mm2", required(transfer(e, 9)).likely() * MM2, "undercut_mm", thousandths / 1000.0);
  }

  private static Finding transfer(WorkedExample e, double gapMm) {
    String rooms =
        "- {id: bed, use: bedroom, doors: [{to: hall, width: %s mm, undercut: %s mm}]}\n" + HALL;
    return assess("england", "floor_area: 84", rooms.formatted(e.in("door_mm"), gapMm))
        .transfer()
        .get(0);
  }

  private static Map<String, Object> addedRoom(WorkedExample e) {
    double height = 2.4;
    String rooms =
        "- {id: new, use: study, added: yes, height: %1$s, floor_area: %2$s, fans: [{id: unit,"
            + " kind: alternating heat recovery, declared_flow: 10 l/s}]}\n"
            + "- {id: rest, use: living, height: %1$s, floor_area: %3$s}";
    VentilationResult result =
        assess(
            "england",
            "floor_area: 95, bedrooms: 3",
            rooms.formatted(
                height,
                e.in("room_m3") / height,
                (e.in("habitable_m3") - e.in("room_m3")) / height));
    assertThat(litres(result.required().wholeHome().orElseThrow()))
        .isCloseTo(e.in("whole_l_s"), within(1e-9));
    return Map.of("l_s", litres(required(finding(result, "room.new.supply"))));
  }

  private static Map<String, Object> heatRecoveryInWetRooms(WorkedExample e) {
    String room =
        "- {id: %1$s, use: %1$s, fans: [{id: f-%1$s, kind: simultaneous heat recovery,"
            + " declared_flow: 10 l/s}]}\n";
    VentilationResult result =
        assess("england", "floor_area: 84", room.formatted("bathroom") + room.formatted("kitchen"));
    Map<String, Object> found = new LinkedHashMap<>();
    for (String id : List.of("bathroom", "kitchen")) {
      found.put(id + ".high", litres(required(finding(result, "room." + id + ".extract"))));
      found.put(
          id + ".continuous",
          litres(required(finding(result, "room." + id + ".extract.continuous"))));
    }
    return found;
  }

  private static Map<String, Object> airChange(WorkedExample e) {
    VentilationResult result =
        assess("england", "floor_area: 95, bedrooms: 3, volume: " + e.in("volume_m3"), HALL);
    RuleComparison row = comparison(result, "england");
    assertThat(litres(row.required().orElseThrow())).isCloseTo(e.in("l_s"), within(1e-9));
    return Map.of("ach", row.airChange().orElseThrow().likely());
  }

  private static Map<String, Object> ashraeTotal(WorkedExample e) {
    Figure inchPound = ask(e, "ashrae-62-2/inch-pound");
    return Map.of(
        "L_s", litres(ask(e, "ashrae-62-2")),
        "cfm", cfm(inchPound),
        "cfm_as_L_s", litres(inchPound));
  }

  /** The home of rows E16 to E19 with the leakage that E18 gives. */
  private static VentilationResult tested() {
    return tested(1000, 2, 0.5);
  }

  private static VentilationResult tested(double q50Cfm, double storeys, double weather) {
    double volume = 228;
    double n50 = Airflow.cubicFeetPerMinute(q50Cfm).airChangePerHour(volume);
    return assess(
        "england",
        String.format(
            Locale.ROOT,
            "floor_area: 95, bedrooms: 3, storeys: %.0f, volume: %.0f, occupants: {adults: 2},"
                + " airtightness: {n50: %.9f /h, basis: measured, weather_factor: %s}",
            storeys,
            volume,
            n50,
            weather),
        HALL);
  }

  /** What the fan may fall short of the total. */
  private static double credit(WorkedExample e) {
    VentilationResult result = tested(e.in("Q50_cfm"), e.in("storeys"), e.in("wsf"));
    return cfm(ask(result, "ashrae-62-2/inch-pound")) - cfm(ask(result, "ashrae-62-2/credited"));
  }

  private static Map<String, Object> modelCode(WorkedExample e) {
    VentilationResult result =
        assess(
            "irc",
            "bedrooms: %.0f, floor_area: %s ft2".formatted(e.in("bedrooms"), e.in("floor_ft2")),
            HALL);
    return Map.of(
        "equation_cfm", cfm(ask(result, "irc")), "table_cfm", cfm(ask(result, "irc/table")));
  }

  private static Map<String, Object> categoryTwo(WorkedExample e) {
    VentilationResult result = assess("en-16798-1", people(e), HALL);
    return Map.of(
        "total_l_s", litres(result.required().wholeHome().orElseThrow()),
        "per_person_l_s", litres(term(result, "people")));
  }

  private static Map<String, Object> netherlands(WorkedExample e) {
    return Map.of(
        "new_dm3_s", litres(oneRoom("living", e.in("new_living_area_m2"), "netherlands/new")),
        "existing_bedroom_dm3_s",
            litres(oneRoom("bedroom", e.in("existing_bedroom_m2"), "netherlands")),
        "existing_living_dm3_s",
            litres(oneRoom("living", e.in("existing_living_m2"), "netherlands")));
  }

  private static Figure oneRoom(String use, double area, String rules) {
    String room = "- {id: room, use: %s, floor_area: %s}".formatted(use, area);
    return ask(assess("netherlands", "floor_area: " + area, room), rules);
  }

  private static Map<String, Object> norway(WorkedExample e) {
    Figure asked = ask(e, "norway");
    return Map.of("m3_h", m3PerHour(asked), "l_s", litres(asked));
  }

  private static Map<String, Object> nordic(WorkedExample e) {
    VentilationResult result = assess("sweden", people(e), HALL);
    return Map.of(
        "denmark_l_s", litres(ask(result, "denmark")),
        "sweden_l_s", litres(ask(result, "sweden")),
        "finland_l_s", litres(ask(result, "finland")));
  }

  /** The design flow of 33.25 l/s is that of E25: 95 m² and four people. */
  private static Map<String, Object> finland(WorkedExample e) {
    VentilationResult result = assess("finland", "floor_area: 95, occupants: {adults: 4}", HALL);
    assertThat(litres(ask(result, "finland"))).isCloseTo(e.in("design_l_s"), within(1e-9));
    return Map.of(
        "boost_min_l_s", litres(ask(result, "finland/boost")),
        "setback_min_l_s", litres(ask(result, "finland/setback")));
  }

  private static Map<String, Object> germany(WorkedExample e) {
    return Map.of(
        "nominal_m3_h", m3PerHour(ask(e, "germany")),
        "reduced_m3_h", m3PerHour(ask(e, "germany/reduced")),
        "moisture_good_m3_h", m3PerHour(ask(e, "germany/moisture-good")),
        "moisture_poor_m3_h", m3PerHour(ask(e, "germany/moisture-poor")),
        "intensive_m3_h", m3PerHour(ask(e, "germany/intensive")),
        "nominal_l_s", litres(ask(e, "germany")));
  }

  private static Map<String, Object> france(WorkedExample e) {
    String rooms =
        IntStream.range(0, (int) e.in("main_rooms"))
            .mapToObj("- {id: room-%d, use: living, floor_area: 20}"::formatted)
            .collect(Collectors.joining("\n"));
    VentilationResult result = assess("france", "floor_area: 80", rooms);
    return Map.of(
        "full_m3_h", m3PerHour(ask(result, "france/full")),
        "reduced_total_m3_h", m3PerHour(ask(result, "france")),
        "humidity_floor_m3_h", m3PerHour(ask(result, "france/humidity-controlled")));
  }

  private static Map<String, Object> older(WorkedExample e) {
    VentilationResult result =
        assess(
            "ashrae-62-1989",
            "floor_area: 95, volume: %s, occupants: {adults: %.0f}"
                .formatted(e.in("volume_m3"), e.in("persons")),
            HALL);
    return Map.of(
        "ach_rule_l_s", litres(term(result, "air change")),
        "person_rule_l_s", litres(term(result, "people")),
        "required_l_s", litres(result.required().wholeHome().orElseThrow()));
  }

  private static Map<String, Object> fanPower(WorkedExample e) {
    double flow = e.in("flow_l_s") / 1000;
    double england = limit("england");
    assertThat(england / 1000).isEqualTo(e.in("sfp"));
    double passive = limit("passive-house-practice");
    double watt = FanEnergy.powerW(england, flow);
    return Map.of(
        "W",
        watt,
        "kWh_year",
        FanEnergy.electricityKwh(watt, 8760),
        "passive_house_limit_W_per_l_s",
        passive / 1000,
        "W_at_limit",
        FanEnergy.powerW(passive, flow));
  }

  private static double limit(String rules) {
    return VentilationFixtures.RULES.find(rules).orElseThrow().fanPower().stream()
        .filter(row -> row.fans() == FanClass.BALANCED)
        .findFirst()
        .orElseThrow()
        .wattPerM3S();
  }

  private static Map<String, Object> ireland(WorkedExample e) {
    String superseded = e.expected().get("superseded_print.persons");
    return Map.of(
        "l_s", litres(byPeople((int) e.in("persons"))),
        "superseded_print.persons", superseded,
        "superseded_print.l_s", litres(byPeople(Integer.parseInt(superseded))));
  }

  private static Figure byPeople(int persons) {
    return term(
        assess(
            "ireland", "floor_area: 40, bedrooms: 2, occupants: {adults: " + persons + "}", HALL),
        "number of people");
  }

  /** Of a series that is constant every moving average is the same. */
  private static Map<String, Object> criteria(WorkedExample e) {
    Range humidity = Range.exactly(e.in("rh") / 100);
    Map<String, Object> found = new LinkedHashMap<>();
    for (Criterion row : VentilationFixtures.RULES.find("england").orElseThrow().criteria()) {
      if (row.quantity() == CriterionQuantity.INDOOR_HUMIDITY) {
        boolean below = Verdict.below(humidity, row.below().value()) == Verdict.MEETS;
        String printed = String.format(Locale.ROOT, "fail (>=%.0f)", row.below().value() * 100);
        found.put(row.over().word(), below ? "pass" : printed);
      }
    }
    return found;
  }

  /** By the same text in which the rule for replaced windows is made the general one. */
  private static Map<String, Object> windowReplacement(WorkedExample e) {
    String general = "%s\n    strategy: natural\n    general: %s";
    String rules = DataFiles.text("rules/england.yaml");
    for (List<String> swap :
        List.of(List.of("natural", "yes", "no"), List.of("replacement", "no", "yes"))) {
      rules =
          rules.replace(
              general.formatted(swap.get(0), swap.get(1)),
              general.formatted(swap.get(0), swap.get(2)));
    }
    String rooms = rooms(e, "windows: [{id: w-%s}]");
    return Map.of(
        "total_mm2", mm2(assessBy(rules, "floor_area: 84, storeys: 2", rooms)),
        "single_storey_total_mm2", mm2(assessBy(rules, "floor_area: 84, storeys: 1", rooms)));
  }

  /** Habitable rooms of the row, a kitchen and a bathroom, each with one thing. */
  private static String rooms(WorkedExample e, String thing) {
    List<String> uses = List.of("living", "bedroom", "bedroom", "bedroom");
    Stream<String> habitable = uses.stream().limit((long) e.in("habitable"));
    List<String> all = Stream.concat(habitable, Stream.of("kitchen", "bathroom")).toList();
    return IntStream.range(0, all.size())
        .mapToObj(i -> "- {id: r%d, use: %s, %s}%n".formatted(i, all.get(i), thing.formatted(i)))
        .collect(Collectors.joining());
  }

  private static String dwelling(WorkedExample e) {
    return dwelling(e, e.in("floor_m2"));
  }

  private static String dwelling(WorkedExample e, double floor) {
    return "bedrooms: %.0f, floor_area: %s".formatted(e.in("bedrooms"), floor);
  }

  private static String people(WorkedExample e) {
    return "floor_area: %s, occupants: {adults: %.0f}".formatted(e.in("floor_m2"), e.in("persons"));
  }

  /** What a rule set asks of a home that has the floor area and the bedrooms of the row. */
  private static Figure ask(WorkedExample e, String rules) {
    String bedrooms = e.inputs().getOrDefault("bedrooms", "3");
    return ask(
        assess(
            "england",
            "floor_area: " + e.in("floor_m2") + ", occupants: {adults: 2}, bedrooms: " + bedrooms,
            HALL),
        rules);
  }

  private static Figure ask(VentilationResult result, String rules) {
    return comparison(result, rules).required().orElseThrow();
  }

  private static Figure term(VentilationResult result, String name) {
    return result.required().terms().stream()
        .filter(term -> term.name().equals(name))
        .map(RequiredAir.Term::rate)
        .findFirst()
        .orElseThrow();
  }

  private static Figure required(Finding finding) {
    return finding.required().orElseThrow();
  }

  private static double mm2(VentilationResult result) {
    return required(finding(result, "ventilation.background.total")).likely() * MM2;
  }

  private static double cfm(Figure figure) {
    return Airflow.m3PerSecond(figure.likely()).cubicFeetPerMinute();
  }

  private static double m3PerHour(Figure figure) {
    return Airflow.m3PerSecond(figure.likely()).m3PerHour();
  }
}
