package org.drysill.reference.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.reference.How;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class BundledClimatesTest {
  private static final Path COLLECTED = Path.of("src/test/resources/reference/climate_pack.csv");

  private final ClimateCatalogue catalogue = ClimateCatalogue.bundled();

  /** SAP 10.2 Tables U1 and U2 (seen) and the documents that each file cites. */
  @TestFactory
  Stream<DynamicTest> every_collected_series_stands_in_its_file() throws IOException {
    return Files.readAllLines(COLLECTED, StandardCharsets.UTF_8).stream()
        .filter(line -> !line.startsWith("#") && !line.startsWith("id,"))
        .map(line -> List.of(line.split(",", -1)))
        .map(
            cells ->
                DynamicTest.dynamicTest(cells.get(0) + " " + cells.get(1), () -> agrees(cells)));
  }

  private void agrees(List<String> cells) {
    ReferenceClimate climate = catalogue.find(cells.get(0)).orElseThrow();
    double[] collected = cells.stream().skip(2).mapToDouble(Double::parseDouble).toArray();
    switch (cells.get(1)) {
      case "temperature" -> assertThat(values(climate.temperature())).containsExactly(collected);
      case "wind" -> assertThat(values(climate.wind())).containsExactly(collected);
      case "humidity" ->
          assertThat(values(climate.humidity()))
              .containsExactly(
                  Arrays.stream(collected).map(percent -> percent / 100).toArray(), within(1e-12));
      case "vapour_pressure" ->
          assertThat(vapourPressures(climate)).containsExactly(collected, within(1.5));
      default -> throw new AssertionError("unknown series " + cells.get(1));
    }
  }

  @Test
  void there_are_22_regions_of_the_united_kingdom_and_26_weather_stations() {
    assertThat(catalogue.ids()).hasSize(48).doesNotHaveDuplicates().isSorted();
    assertThat(catalogue.ids().stream().filter(id -> id.startsWith("uk-"))).hasSize(22);
  }

  @Test
  void a_file_is_named_as_its_id() {
    assertThat(catalogue.ids())
        .allSatisfy(
            id ->
                assertThat(Path.of("src/main/resources/reference/climate", id + ".yaml")).exists());
  }

  @Test
  void twelve_plausible_months_each_with_sources() {
    for (ReferenceClimate climate : catalogue.all()) {
      assertThat(climate.temperature()).as(climate.id()).hasSize(12);
      assertThat(climate.humidity()).as(climate.id()).hasSize(12);
      assertThat(values(climate.temperature())).as(climate.id()).allMatch(t -> t > -15 && t < 32);
      assertThat(values(climate.humidity())).as(climate.id()).allMatch(h -> h > 0.35 && h < 0.95);
      assertThat(values(climate.wind())).as(climate.id()).allMatch(w -> w > 0.5 && w < 12);
      assertThat(climate.windSource().isPresent())
          .as(climate.id())
          .isEqualTo(!climate.wind().isEmpty());
      assertThat(climate.temperatureSource().document()).as(climate.id()).isNotBlank();
    }
  }

  @Test
  void winter_is_colder_than_summer_north_of_the_equator() {
    for (ReferenceClimate climate : catalogue.all()) {
      double[] temperature = values(climate.temperature());
      assertThat(temperature[6]).as(climate.id()).isGreaterThan(temperature[0] + 5);
    }
  }

  @Test
  void estimated_humidities_say_so_and_carry_four_points() {
    for (ReferenceClimate climate : catalogue.all()) {
      if (climate.id().startsWith("uk-")) {
        assertThat(climate.humiditySource().how()).isEqualTo(How.ASSUMPTION);
        assertThat(climate.humidityUncertainty().value()).isEqualTo(0.04);
        assertThat(climate.note().orElseThrow()).contains("estimated");
      } else {
        assertThat(climate.humiditySource().how()).isNotEqualTo(How.ASSUMPTION);
        assertThat(climate.humidityUncertainty().value()).isBetween(0.02, 0.05);
      }
    }
  }

  @Test
  void the_fallback_is_one_of_them() {
    assertThat(catalogue.find(catalogue.defaults().fallback())).isPresent();
  }

  private static double[] vapourPressures(ReferenceClimate climate) {
    double[] temperature = values(climate.temperature());
    double[] humidity = values(climate.humidity());
    return IntStream.range(0, 12)
        .mapToDouble(
            i -> humidity[i] * Iso13788Vapour.saturationPressureOverWaterPa(temperature[i]))
        .toArray();
  }

  private static double[] values(List<Quantity> quantities) {
    return quantities.stream().mapToDouble(Quantity::value).toArray();
  }
}
