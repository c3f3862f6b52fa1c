package org.drysill.reference.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every bundled climate against the figures as collected ({@code climate_pack.csv}: SAP 10.2,
 * Appendix U, Tables U1 and U2, seen in copies that agree; stations as each file cites, seen or
 * memory), and against what weather can be.
 */
class BundledClimatesTest {
  private static final ClimateCatalogue CATALOGUE = ClimateCatalogue.bundled();

  static Stream<ReferenceClimate> climates() {
    return CATALOGUE.all().stream();
  }

  static List<NamedCsvRecord> collected() {
    try (InputStream in =
            BundledClimatesTest.class.getResourceAsStream("/reference/climate_pack.csv");
        CsvReader<NamedCsvRecord> csv =
            CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      List<NamedCsvRecord> rows = new ArrayList<>();
      csv.forEach(rows::add);
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double[] values(NamedCsvRecord row) {
    return IntStream.rangeClosed(1, 12)
        .mapToDouble(m -> Double.parseDouble(row.getField("m" + m)))
        .toArray();
  }

  private static double[] values(List<Quantity> months, double scale) {
    return months.stream().mapToDouble(q -> q.value() * scale).toArray();
  }

  @Test
  void there_are_48_and_each_was_collected() {
    assertThat(CATALOGUE.ids()).hasSize(48).doesNotHaveDuplicates();
    assertThat(
            collected().stream()
                .filter(row -> row.getField("series").equals("temperature"))
                .map(row -> row.getField("id")))
        .containsExactlyInAnyOrderElementsOf(CATALOGUE.ids());
  }

  @ParameterizedTest
  @MethodSource("collected")
  void bundled_values_are_those_collected(NamedCsvRecord row) {
    ReferenceClimate climate = CATALOGUE.find(row.getField("id")).orElseThrow();
    switch (row.getField("series")) {
      case "temperature" ->
          assertThat(values(climate.temperature(), 1)).containsExactly(values(row), within(1e-9));
      case "humidity" ->
          assertThat(values(climate.humidity(), 100)).containsExactly(values(row), within(1e-9));
      case "wind" ->
          assertThat(values(climate.wind(), 1)).containsExactly(values(row), within(1e-9));
      case "vapour_pressure" ->
          assertThat(vapourPressures(climate)).containsExactly(values(row), within(1.5));
      default -> throw new AssertionError("unknown series " + row.getField("series"));
    }
  }

  /** Humidities are printed to a tenth of a point: up to 1.2 Pa at 20 °C. */
  private static double[] vapourPressures(ReferenceClimate climate) {
    return IntStream.range(0, 12)
        .mapToDouble(
            i ->
                climate.humidity().get(i).value()
                    * Iso13788Vapour.saturationPressureOverWaterPa(
                        climate.temperature().get(i).value()))
        .toArray();
  }

  @ParameterizedTest
  @MethodSource("climates")
  void a_climate_is_one_that_people_live_in(ReferenceClimate climate) {
    assertThat(values(climate.temperature(), 1)).hasSize(12);
    climate.temperature().forEach(t -> assertThat(t.value()).isBetween(-15.0, 32.0));
    climate.humidity().forEach(h -> assertThat(h.value()).isBetween(0.35, 1.0));
    climate.wind().forEach(w -> assertThat(w.value()).isBetween(0.5, 12.0));
    assertThat(Arrays.stream(vapourPressures(climate))).allMatch(pa -> pa > 150 && pa < 3000);
    assertThat(climate.humidityUncertainty().value()).isBetween(0.005, 0.06);
  }

  /** All bundled places lie north of the equator. */
  @ParameterizedTest
  @MethodSource("climates")
  void the_warmest_month_is_one_of_summer(ReferenceClimate climate) {
    double[] months = values(climate.temperature(), 1);
    int warmest =
        IntStream.range(0, 12).reduce(0, (best, i) -> months[i] > months[best] ? i : best) + 1;
    int coldest =
        IntStream.range(0, 12).reduce(0, (best, i) -> months[i] < months[best] ? i : best) + 1;
    assertThat(warmest).isBetween(6, 9);
    assertThat(coldest).isIn(12, 1, 2);
    climate.latitude().ifPresent(l -> assertThat(l.value()).isPositive());
  }

  /** Below freezing no more vapour than saturated over ice may follow from what is printed. */
  @ParameterizedTest
  @MethodSource("climates")
  void no_month_is_supersaturated_over_ice(ReferenceClimate climate) {
    for (int i = 0; i < 12; i++) {
      double celsius = climate.temperature().get(i).value();
      if (celsius < 0) {
        assertThat(Iso13788Vapour.humidityOverIce(celsius, climate.humidity().get(i).value()))
            .as("%s, month %d", climate.id(), i + 1)
            .isLessThanOrEqualTo(1);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("climates")
  void wind_comes_with_its_source(ReferenceClimate climate) {
    assertThat(climate.windSource().isPresent()).isEqualTo(!climate.wind().isEmpty());
  }
}
