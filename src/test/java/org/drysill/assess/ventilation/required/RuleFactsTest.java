package org.drysill.assess.ventilation.required;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.physics.Range;
import org.drysill.reference.rules.Condition;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.survey.RoomUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RuleFactsTest {
  private static RuleFacts facts(String dwelling, String rooms) {
    return RuleFacts.of(VentilationFixtures.home("england", dwelling, rooms));
  }

  private static final String LIVING = "- {id: l, use: living, floor_area: %s}%n";

  @Test
  void rooms_that_cover_three_quarters_of_the_floor_are_all_of_them() {
    assertThat(facts("floor_area: 40, bedrooms: 0", LIVING.formatted(30)).mainRooms()).hasValue(1);
    assertThat(facts("floor_area: 40, bedrooms: 0", LIVING.formatted(29.9)).mainRooms()).isEmpty();
  }

  @Test
  void a_loft_and_a_room_of_unknown_area_do_not_help_to_cover_it() {
    assertThat(
            facts(
                    "floor_area: 40, bedrooms: 0",
                    LIVING.formatted(29)
                        + "- {id: loft, use: loft, floor_area: 40}\n- {id: k, use: kitchen}")
                .rooms())
        .isEmpty();
  }

  @Test
  void every_bedroom_must_be_among_them() {
    String bed = "- {id: b, use: bedroom, floor_area: 10}";
    assertThat(facts("floor_area: 40, bedrooms: 1", LIVING.formatted(30) + bed).mainRooms())
        .hasValue(2);
    assertThat(facts("floor_area: 40, bedrooms: 2", LIVING.formatted(30) + bed).mainRooms())
        .isEmpty();
  }

  @Test
  void a_home_of_one_habitable_room_is_named_so_or_seen_to_be() {
    assertThat(facts("floor_area: 30, type: studio, bedrooms: 1", "- {id: h, use: hall}"))
        .extracting(RuleFacts::oneHabitableRoom)
        .isEqualTo(true);
    assertThat(facts("floor_area: 30, bedrooms: 0", "- {id: h, use: hall}").oneHabitableRoom())
        .isTrue();
    assertThat(facts("floor_area: 30, bedrooms: 1", "- {id: h, use: hall}").oneHabitableRoom())
        .isFalse();
    assertThat(
            facts("floor_area: 30, type: mid-floor flat, bedrooms: 1", "- {id: h, use: hall}")
                .oneHabitableRoom())
        .isFalse();
    assertThat(
            facts("floor_area: 90, type: studio, bedrooms: 2", "- {id: h, use: hall}")
                .oneHabitableRoom())
        .isFalse();
    assertThat(
            facts("floor_area: 30, bedrooms: 1", "- {id: b, use: bedroom, floor_area: 30}")
                .oneHabitableRoom())
        .isTrue();
    assertThat(
            facts(
                    "floor_area: 40, bedrooms: 1",
                    LIVING.formatted(20) + "- {id: b, use: bedroom, floor_area: 20}")
                .oneHabitableRoom())
        .isFalse();
  }

  @Test
  void a_group_holds_for_itself_and_for_the_habitable_rooms_within() {
    RuleFacts.Room bedroom = new RuleFacts.Room(RoomGroup.BEDROOM, Range.exactly(9));
    assertThat(bedroom.isOf(RoomGroup.BEDROOM)).isTrue();
    assertThat(bedroom.isOf(RoomGroup.HABITABLE)).isTrue();
    assertThat(bedroom.isOf(RoomGroup.LIVING)).isFalse();
    RuleFacts.Room kitchen = new RuleFacts.Room(RoomGroup.KITCHEN, Range.exactly(9));
    assertThat(kitchen.isOf(RoomGroup.HABITABLE)).isFalse();
    assertThat(new RuleFacts.Room(RoomGroup.LIVING, Range.exactly(9)).isOf(RoomGroup.HABITABLE))
        .isTrue();
  }

  @ParameterizedTest
  @EnumSource(RoomUse.class)
  void a_room_belongs_to_a_group_unless_people_only_pass_through_it(RoomUse use) {
    boolean passed =
        use == RoomUse.HALL || use == RoomUse.STORE || use == RoomUse.LOFT || use == RoomUse.CELLAR;
    assertThat(RuleFacts.group(use).isEmpty()).isEqualTo(passed);
  }

  /** 6 /h × 120 m³ = 720 m³/h = 0.2 m³/s. */
  @Test
  void leakage_at_fifty_pascal_is_by_volume() {
    RuleFacts facts =
        facts(
            "floor_area: 50, volume: 120, airtightness: {n50: 6, basis: measured}",
            "- {id: h, use: hall}");
    assertThat(facts.leakageAt50PaM3S().likely()).isCloseTo(0.2, within(1e-12));
    assertThat(facts.weatherFactor()).isEmpty();
    assertThat(facts.holds(Condition.NO_EXTERNAL_WALL)).isFalse();
  }
}
