package org.drysill.assess.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.provided.Provision;
import org.drysill.reference.model.ModelDefaults;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.RoomUse;
import org.junit.jupiter.api.Test;

/** Rooms, doors, fans and sources as the model sees them. */
class PartsOfModelTest {
  private static final ModelDefaults DEFAULTS = ModelDefaults.bundled();

  private static Layout layout(String rooms) {
    return new Layout(HomeFixtures.home(rooms), DEFAULTS, List.of());
  }

  @Test
  void every_room_is_joined_and_every_door_counts_once() {
    Layout layout =
        layout(
            """
            - {id: kitchen, use: kitchen, doors: [{to: hall}, {to: garden}, {to: kitchen}]}
            - {id: hall, use: hall, doors: [{to: kitchen}, {to: landing}]}
            - {id: landing, use: hall}
            - {id: bed, use: bedroom}
            - {id: loft, use: loft}
            """);
    assertThat(layout.rooms()).extracting(r -> r.id()).doesNotContain("loft");
    assertThat(layout.ways())
        .containsExactly(
            new Layout.Way(0, 1, false), new Layout.Way(1, 2, true), new Layout.Way(3, 1, false));
    assertThat(layout.exchange(layout.ways().get(1))).isEqualTo(DEFAULTS.openWay());
    assertThat(layout.indexOf("loft")).isEqualTo(1);
    assertThat(layout.routes().zones()).isEqualTo(4);
  }

  @Test
  void a_way_joins_its_two_rooms() {
    Layout.Way way = new Layout.Way(1, 3, false);
    assertThat(way.joins(1, 3)).isTrue();
    assertThat(way.joins(3, 1)).isTrue();
    assertThat(way.joins(1, 2)).isFalse();
    assertThat(way.joins(3, 2)).isFalse();
  }

  @Test
  void without_hall_the_largest_room_is_the_hub() {
    Layout layout =
        layout(
            """
            - {id: bath, use: bathroom, floor_area: 4 m2}
            - {id: living, use: living room, floor_area: 20 m2}
            - {id: bed, use: bedroom, floor_area: 12 m2}
            """);
    assertThat(layout.hub()).isEqualTo(1);
    assertThat(layout.ways())
        .containsExactly(new Layout.Way(0, 1, false), new Layout.Way(2, 1, false));
  }

  @Test
  void fans_act_in_their_rooms_and_systems_in_those_they_serve() {
    String rooms =
        """
        - {id: hall, use: hall}
        - {id: kitchen, use: kitchen}
        - {id: bath, use: bathroom, fans: [{id: f, kind: continuous extract, run: continuous, measured_flow: 8 l/s},
             {id: dead, kind: fitted but not working}]}
        - {id: living, use: living room, floor_area: 20 m2}
        - {id: bed, use: bedroom, floor_area: 10 m2}
        - {id: loft, use: loft, fans: [{id: mvhr, kind: balanced heat recovery, run: continuous, measured_flow: 30 l/s},
             {id: piv, kind: positive input, run: continuous, measured_flow: 6 l/s}]}
        """;
    Layout layout = layout(rooms);
    ProvidedAir air =
        Provision.of(HomeFixtures.home(rooms), VentilationDefaults.bundled(), Map.of());
    List<FanInModel> fans = FanInModel.all(layout, air.fans());
    assertThat(fans).extracting(FanInModel::id).containsExactly("f", "mvhr", "piv");
    double[] supply = new double[5];
    double[] extract = new double[5];
    fans.forEach(f -> f.addTo(supply, extract, 1));
    assertThat(extract[1]).isCloseTo(0.015, within(1e-12));
    assertThat(extract[2]).isCloseTo(0.023, within(1e-12));
    assertThat(supply[3]).isCloseTo(0.020, within(1e-12));
    assertThat(supply[4]).isCloseTo(0.010, within(1e-12));
    assertThat(supply[0]).isCloseTo(0.006, within(1e-12));
  }

  /** A whole-home system in a home without rooms for it acts where it stands. */
  @Test
  void a_system_without_rooms_to_serve_acts_where_it_stands() {
    String rooms =
        "- {id: hall, use: hall, fans: [{id: mvhr, kind: balanced heat recovery, run: continuous,"
            + " measured_flow: 30 l/s}]}";
    ProvidedAir air =
        Provision.of(HomeFixtures.home(rooms), VentilationDefaults.bundled(), Map.of());
    double[] supply = new double[1];
    FanInModel.all(layout(rooms), air.fans()).get(0).addTo(supply, new double[1], 1);
    assertThat(supply[0]).isCloseTo(0.03, within(1e-12));
  }

  @Test
  void sources_are_where_they_are_listed_or_usually_are() {
    Chain chain =
        Chain.of(
            """
            drysill: 1
            visit: {date: 2026-01-22}
            dwelling: {jurisdiction: england, floor_area: 60 m2, bedrooms: 1, occupants: {adults: 1}}
            rooms:
            - {id: diner, use: kitchen-dining room}
            - {id: bed, use: bedroom}
            - {id: other, use: bedroom, moisture_sources: [{kind: other, rate: 5 kg/day}]}
            - {id: store, use: store}
            """);
    Layout layout = new Layout(chain.home(), DEFAULTS, chain.found().rooms());
    double[] parts = new WaterOfRooms(layout, DEFAULTS).parts(chain.moisture());
    double all = chain.moisture().itemised().likely();
    assertThat(Arrays.stream(parts).sum()).isCloseTo(1, within(1e-9));
    assertThat(parts[2]).isGreaterThan(5.0 / 86_400 / all);
    assertThat(parts[3]).isPositive().isLessThan(parts[1]);
    assertThat(parts[0]).isGreaterThan(parts[1]);
  }

  @Test
  void the_words_of_the_data_are_those_of_surveys() {
    List<String> uses = Arrays.stream(RoomUse.values()).map(RoomUse::word).toList();
    assertThat(DEFAULTS.people()).allSatisfy(p -> assertThat(uses).containsAll(p.rooms()));
    assertThat(DEFAULTS.sources())
        .allSatisfy(
            s -> {
              assertThat(uses).containsAll(s.rooms());
              assertThat(MoistureSources.bundled().kinds()).contains(s.kind());
            });
    assertThat(DEFAULTS.people().stream().mapToDouble(p -> p.share().value()).sum())
        .isLessThanOrEqualTo(1);
  }
}
