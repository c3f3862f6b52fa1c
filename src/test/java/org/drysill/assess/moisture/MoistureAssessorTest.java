package org.drysill.assess.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.physics.Range;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.readings.ReadingRules;
import org.junit.jupiter.api.Test;

/**
 * The water that a home gives off, item by item. Rates are those of the bundled table (40 and 55
 * g/h of BS 5250:2002 from memory, 2 kg a load dried indoors from MacKay 2008, seen); sums by hand.
 */
class MoistureAssessorTest {
  private static final double SECONDS_PER_DAY = 86_400;
  private static final ReadingRules RULES = ReadingRules.bundled();

  private static MoistureResult assess(String occupants, String sources) {
    Home home =
        HomeFixtures.home(
            "floor_area: 84 m2, bedrooms: 3" + occupants,
            "- {id: kitchen, use: kitchen, moisture_sources: [" + sources + "]}");
    return MoistureAssessor.assess(
        home,
        MoistureSources.bundled(),
        HomeFixtures.figure("ventilation.whole_home", Range.exactly(0.03), Unit.AIRFLOW),
        HumidityAssessor.assess(home, RULES),
        RULES.balance());
  }

  private static Item item(MoistureResult result, String kind) {
    return result.items().stream().filter(i -> i.kind().equals(kind)).findFirst().orElseThrow();
  }

  private static List<String> assumed(MoistureResult result) {
    return result.assumptions().stream().map(Assumption::id).toList();
  }

  private static void daily(Figure figure, double low, double likely, double high) {
    Range kg = figure.value().times(SECONDS_PER_DAY);
    assertThat(kg.low()).isCloseTo(low, within(1e-9));
    assertThat(kg.likely()).isCloseTo(likely, within(1e-9));
    assertThat(kg.high()).isCloseTo(high, within(1e-9));
  }

  /**
   * Somebody is at home: at least one of three, 6 + (12 - 6)/3 = 8 h awake by person, at most all,
   * 12 h, likely 10 h; at the ends (2 × 4 + 9)/3 = 5.67 h and 15 h. (8 h × 40 g + 10 h × 55 g) ×
   * 2.7, a child counting 0.7 of an adult.
   */
  @Test
  void people_asleep_and_awake() {
    MoistureResult home = assess(", occupants: {adults: 2, children: 1, home_by_day: yes}", "");
    Item people = item(home, "people");
    daily(people.production(), (0.21 + 17 / 3.0 * 0.04) * 2.4, (0.32 + 10 * 0.055) * 2.7, 1.8 * 3);
    assertThat(people.scaledBy()).isEqualTo("2 adults and 1 child, somebody at home by day");
    assertThat(people.room()).isEmpty();
    assertThat(assumed(home)).doesNotContain("moisture.people.home_by_day");
  }

  /** One who lives alone and is at home is so all day: 0.32 + 12 × 0.055 kg. */
  @Test
  void who_lives_alone_is_the_one_at_home() {
    Item one = item(assess(", occupants: {adults: 1, home_by_day: yes}", ""), "people");
    daily(one.production(), 0.21 + 9 * 0.04, 0.32 + 12 * 0.055, 0.45 + 15 * 0.09);
  }

  /**
   * Three bedrooms make four people in the fixture, two of them children as the survey says: 2 + 2
   * × 0.7 (0.4 to 1) adults.
   */
  @Test
  void children_alone_in_a_survey_have_adults_with_them() {
    Item people = item(assess(", occupants: {children: 2, home_by_day: no}", ""), "people");
    daily(
        people.production(),
        (0.21 + 4 * 0.04) * 2.8,
        (0.32 + 6 * 0.055) * 3.4,
        (0.45 + 8 * 0.09) * 4);
    assertThat(people.scaledBy()).startsWith("adults as assumed for this home and 2 children");
  }

  @Test
  void people_who_are_out_by_day_give_off_less() {
    Item out = item(assess(", occupants: {adults: 1, home_by_day: no}", ""), "people");
    daily(out.production(), 0.21 + 4 * 0.04, 0.32 + 6 * 0.055, 0.45 + 8 * 0.09);
    assertThat(out.scaledBy()).isEqualTo("1 adult, nobody at home by day");
  }

  @Test
  void whether_somebody_is_at_home_by_day_is_asked_where_nobody_said_it() {
    MoistureResult home = assess(", occupants: {adults: 3, children: 2}", "");
    Item people = item(home, "people");
    Range adults = new Range(3.8, 4.4, 5);
    daily(
        people.production(),
        (0.21 + 4 * 0.04) * adults.low(),
        (0.32 + 9 * 0.055) * adults.likely(),
        (0.45 + 15 * 0.09) * adults.high());
    assertThat(people.scaledBy()).contains("2 children", "not told");
    assertThat(assumed(home)).contains("moisture.people.home_by_day");
    assertThat(assumed(assess(", occupants: {adults: 1, home_by_day: unknown}", "")))
        .contains("moisture.people.home_by_day");
  }

  /** Three bedrooms make four people in the fixture. */
  @Test
  void a_household_that_nobody_counted_is_taken_as_the_home_says() {
    Item people = item(assess("", ""), "people");
    daily(
        people.production(), 4 * (0.21 + 4 * 0.04), 4 * (0.32 + 9 * 0.055), 4 * (0.45 + 15 * 0.09));
    assertThat(people.scaledBy()).startsWith("occupants as assumed");
    assertThat(people.production().working().inputs()).extracting(Input::symbol).contains("hw");
  }

  /** 4 loads × 2.0 kg (1.0 to 2.5) / 7 days. */
  @Test
  void a_source_that_is_counted_by_the_week() {
    MoistureResult home = assess("", "{kind: clothes drying indoors, loads_per_week: 4}");
    Item drying = item(home, "clothes drying indoors");
    daily(drying.production(), 4 / 7.0, 8 / 7.0, 10 / 7.0);
    assertThat(drying.scaledBy()).isEqualTo("4 loads a week");
    assertThat(drying.room()).contains("kitchen");
    assertThat(drying.production().basis()).isEqualTo(Basis.PUBLISHED);
    assertThat(assumed(home)).noneMatch(id -> id.startsWith("moisture.kitchen"));
    assertThat(drying.production().working().formula()).isEqualTo("G = m N / 7 days");
  }

  /** Gas cooking, 3.0 kg a day (1.5 to 4.0) on 5 to 7 days; lids and a hood leave 0.3 to 0.9. */
  @Test
  void lids_and_a_hood_take_their_share_from_cooking() {
    MoistureResult without = assess("", "{kind: cooking, fuel: mains gas}");
    daily(item(without, "cooking").production(), 1.5 * 5 / 7, 3, 4);
    assertThat(item(without, "cooking").scaledBy()).isEqualTo("7 (5 to 7) days a week");
    assertThat(assumed(without)).contains("moisture.kitchen.source_1");
    MoistureResult with = assess("", "{kind: cooking, fuel: mains gas, lids_and_hood: yes}");
    daily(item(with, "cooking").production(), 1.5 * 5 / 7 * 0.3, 3 * 0.6, 4 * 0.9);
    assertThat(item(with, "cooking").scaledBy()).endsWith("with lids and hood");
    assertThat(item(with, "cooking").production().working().inputs()).hasSize(3);
  }

  @Test
  void the_rate_follows_the_fuel_and_what_was_counted() {
    daily(
        item(assess("", "{kind: cooking, fuel: electricity}"), "cooking").production(),
        5 / 7.0,
        2,
        3);
    daily(
        item(assess("", "{kind: cooking, hours_per_day: 2}"), "cooking").production(),
        0.8,
        1.2,
        3.0);
    daily(
        item(assess("", "{kind: shower, times_per_week: 14}"), "shower").production(),
        0.4,
        0.6,
        1.0);
  }

  /** 6 plants; 2 kW for 3 h a day of an unflued heater on mains gas: 0.146 to 0.162 kg/kWh. */
  @Test
  void things_and_kilowatt_hours_are_counted_too() {
    MoistureResult plants = assess("", "{kind: house plants, count: 6}");
    assertThat(item(plants, "house plants").scaledBy()).isEqualTo("6 of them, all week");
    Item heater =
        item(
            assess("", "{kind: unflued heater, fuel: mains gas, power: 2 kW, hours_per_day: 3}"),
            "unflued heater");
    assertThat(heater.production().value().times(SECONDS_PER_DAY).low())
        .isCloseTo(6 * 0.146, within(1e-9));
    assertThat(heater.scaledBy()).isEqualTo("42 kWh a week");
    MoistureResult unknownPower = assess("", "{kind: unflued heater, hours_per_day: 3}");
    assertThat(assumed(unknownPower)).contains("moisture.kitchen.source_1");
  }

  @Test
  void a_rate_that_the_survey_states_beats_the_table() {
    MoistureResult home = assess("", "{kind: other, rate: 0.4 kg/day, note: fish tank}");
    Item tank = item(home, "other");
    daily(tank.production(), 0.4, 0.4, 0.4);
    assertThat(tank.label()).isEqualTo("fish tank");
    assertThat(tank.production().basis()).isEqualTo(Basis.DECLARED);
    assertThat(tank.production().working().note()).contains("fish tank");
    daily(item(assess("", "{kind: cooking, rate: 1 kg/day}"), "cooking").production(), 1, 1, 1);
    assertThat(item(assess("", "{kind: other, rate: 1 kg/day}"), "other").label())
        .isEqualTo("other source");
  }

  @Test
  void a_source_without_any_rate_is_left_out_and_said_to_be() {
    MoistureResult home = assess("", "{kind: other, note: leaking tap}");
    assertThat(home.items()).noneMatch(i -> i.kind().equals("other"));
    Assumption left =
        home.assumptions().stream()
            .filter(a -> a.id().equals("moisture.kitchen.source_1"))
            .findFirst()
            .orElseThrow();
    assertThat(left.about()).isEqualTo("Leaking tap in the kitchen");
    assertThat(left.assumed()).isEqualTo("left out of the sum");
  }

  @Test
  void what_every_home_does_is_counted_even_where_nobody_lists_it() {
    MoistureResult home = assess(", occupants: {adults: 2}", "");
    assertThat(home.items())
        .extracting(Item::kind)
        .contains("cooking", "washing and bathing", "clothes washing", "clothes drying indoors");
    daily(item(home, "washing and bathing").production(), 0.2, 0.4, 1.0);
    assertThat(assumed(home)).contains("moisture.unlisted.washing_and_bathing");
    MoistureResult showers = assess("", "{kind: shower, times_per_week: 14}");
    assertThat(showers.items()).extracting(Item::kind).doesNotContain("washing and bathing");
  }

  @Test
  void nobody_cooks_in_an_empty_home_and_a_leak_still_drips() {
    MoistureResult home = assess(", occupants: {adults: 0}", "{kind: leak, rate: 2 kg/day}");
    assertThat(home.items()).extracting(Item::kind).containsExactly("people", "leak");
    daily(home.itemised(), 2, 2, 2);
    assertThat(assumed(home)).containsExactly("moisture.people");
    MoistureResult family = assess(", occupants: {adults: 0, children: 2}", "");
    assertThat(family.items()).extracting(Item::kind).contains("cooking");
  }

  /** What the list says is the sum of its items, to the last grain. */
  @Test
  void the_sum_conserves_the_water_of_its_items() {
    MoistureResult home =
        assess(
            ", occupants: {adults: 2, children: 1}",
            "{kind: clothes drying indoors, loads_per_week: 4}, {kind: shower}, {kind: bath},"
                + " {kind: house plants, count: 3}, {kind: other, rate: 0.4 kg/day}");
    Range sum = home.itemised().value();
    List<Range> items = home.items().stream().map(i -> i.production().value()).toList();
    assertThat(items.stream().mapToDouble(Range::low).sum() / sum.low()).isCloseTo(1, within(1e-9));
    assertThat(items.stream().mapToDouble(Range::likely).sum() / sum.likely())
        .isCloseTo(1, within(1e-9));
    assertThat(items.stream().mapToDouble(Range::high).sum() / sum.high())
        .isCloseTo(1, within(1e-9));
    assertThat(home.itemised().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(home.itemised().working().inputs()).hasSameSizeAs(home.items());
  }

  @Test
  void published_totals_stand_beside_it_for_a_household_of_its_size() {
    List<Figure> one = assess(", occupants: {adults: 1}", "").checks();
    List<Figure> many = assess(", occupants: {adults: 12}", "").checks();
    assertThat(one).isNotEmpty().allSatisfy(f -> assertThat(f.name()).endsWith("household of 1"));
    assertThat(many).allSatisfy(f -> assertThat(f.name()).endsWith(" or more"));
    assertThat(one.get(0).working().formula()).isEqualTo("as printed");
  }
}
