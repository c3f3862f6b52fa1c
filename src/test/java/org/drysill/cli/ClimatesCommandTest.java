package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.drysill.Drysill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClimatesCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), Map.of(), false, arguments);
  }

  private List<String> lines() {
    return out.toString().lines().toList();
  }

  @Test
  void every_climate_has_a_line() {
    assertThat(run("climates")).isZero();
    int head = 1;
    assertThat(lines()).hasSize(head + Drysill.climates().size());
    assertThat(lines()).anyMatch(l -> l.startsWith("uk-midlands") && l.contains("4.3"));
  }

  @Test
  void the_nearest_stands_first_with_its_distance() {
    assertThat(run("climates", "--near", "51.5,-0.46")).isZero();
    assertThat(lines().get(1)).startsWith("london-heathrow").endsWith("  2");
    assertThat(lines().get(2)).startsWith("uk-thames");
  }

  @ParameterizedTest
  @ValueSource(strings = {"51.5", "north,east", "95,0", "0,190", "1,2,3"})
  void what_is_no_place_is_wrong_use(String place) {
    assertThat(run("climates", "--near", place)).isEqualTo(2);
    assertThat(err.toString()).contains("latitude and longitude in degrees").contains(place);
  }
}
