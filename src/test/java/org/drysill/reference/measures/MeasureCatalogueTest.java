package org.drysill.reference.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drysill.reference.cautions.Caution;
import org.drysill.reference.cautions.CautionFile;
import org.drysill.survey.ColdSpotKind;
import org.drysill.survey.FanKind;
import org.drysill.yaml.Worded;
import org.junit.jupiter.api.Test;

class MeasureCatalogueTest {
  private static final List<Measure> MEASURES = MeasureCatalogue.read().measures();

  @Test
  void ids_and_names_are_unique() {
    assertThat(MEASURES).extracting(Measure::id).doesNotHaveDuplicates();
    assertThat(MeasureCatalogue.read().names())
        .doesNotHaveDuplicates()
        .contains("single-room heat recovery pair", "balanced heat recovery");
  }

  @Test
  void every_caution_and_exclusion_that_a_measure_names_exists() {
    Set<String> cautions =
        CautionFile.all().stream().map(Caution::id).collect(Collectors.toCollection(TreeSet::new));
    Set<String> ids =
        MEASURES.stream().map(Measure::id).collect(Collectors.toCollection(TreeSet::new));
    assertThat(MEASURES)
        .allSatisfy(m -> assertThat(cautions).as(m.id()).containsAll(m.cautions()))
        .allSatisfy(m -> assertThat(ids).as(m.id()).containsAll(m.exclusions()));
  }

  @Test
  void exclusions_hold_both_ways() {
    assertThat(pairs(false)).containsExactlyElementsOf(pairs(true));
  }

  private static Set<String> pairs(boolean turned) {
    Set<String> pairs = new TreeSet<>();
    for (Measure m : MEASURES) {
      for (String e : m.exclusions()) {
        pairs.add(turned ? e + " " + m.id() : m.id() + " " + e);
      }
    }
    return pairs;
  }

  @Test
  void kinds_are_words_of_cold_spots_or_fans() {
    assertThat(MEASURES)
        .allSatisfy(m -> assertThat(words(m.place())).as(m.id()).containsAll(m.kinds()));
  }

  @Test
  void fans_that_come_and_go_are_words_of_fans() {
    List<String> fans = words(MeasurePlace.FAN);
    assertThat(MEASURES)
        .flatExtracting(m -> m.air().map(AirEffect::replaces).orElse(List.of()))
        .isNotEmpty()
        .allMatch(fans::contains);
    assertThat(MEASURES)
        .flatExtracting(m -> m.air().flatMap(AirEffect::fan).stream().toList())
        .isNotEmpty()
        .allMatch(fans::contains);
  }

  @Test
  void every_measure_does_something_or_mends_a_cause() {
    assertThat(MEASURES)
        .allMatch(
            m ->
                m.isBeforeAll()
                    || m.air().isPresent()
                    || m.moisture().isPresent()
                    || m.surface().isPresent()
                    || m.warmth().isPresent());
  }

  @Test
  void every_fan_that_takes_air_out_warns_of_open_flues() {
    assertThat(MEASURES)
        .filteredOn(m -> m.air().filter(a -> a.moves() == AirMove.EXTRACT).isPresent())
        .allSatisfy(m -> assertThat(m.cautions()).as(m.id()).contains("open-flue-with-extract"));
  }

  private static List<String> words(MeasurePlace place) {
    return switch (place) {
      case COLD_SPOT -> List.of(ColdSpotKind.values()).stream().map(Worded::word).toList();
      case FAN -> List.of(FanKind.values()).stream().map(Worded::word).toList();
      case HOME, WET_ROOM, KITCHEN, HABITABLE_ROOM, ROOM, WINDOW -> List.of();
    };
  }
}
