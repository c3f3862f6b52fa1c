package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.drysill.Drysill;
import org.drysill.report.pdf.Validator;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water within walls, from the survey to the printed page. */
class WallsReportTest {
  private static final String START =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {floor_area: 40 m2, jurisdiction: RULES, climate: helsinki}
      rooms:
        - id: living
          use: living
          setpoint: 20 C
          walls:
            - id: north
              name: North wall
              layers: [LAYERS]
      """;

  @TempDir private Path folder;

  private Path survey(String rules, String layers) throws IOException {
    return Files.writeString(
        folder.resolve(rules + layers.hashCode() + ".yaml"),
        START.replace("RULES", rules).replace("LAYERS", layers));
  }

  @Test
  void a_lined_wall_is_told_drawn_and_put_into_the_results()
      throws IOException, InterruptedException {
    Rendered report =
        Rendered.of(
            survey(
                "england",
                "{material: plasterboard, thickness: 12.5 mm}, {material: mineral wool, thickness:"
                    + " 60 mm}, {material: foil}, {material: brick, thickness: 215 mm}"));
    assertThat(report.text())
        .contains(
            "Withinonewallmorewatersettlesthandries",
            "Waterstaysbetweenthemineralwoolandthealuminiumfoilfromyeartoyear",
            "inJanuarywatersettlesbetweenthemineralwoolandthe",
            "Waterwithinthenorthwallbymonth",
            "Withthetightsheetmoved",
            "Nowaterwouldsettle,evenattheunfavourableends,",
            "drivingrain",
            "haveaspecialistsimulate")
        .doesNotContain("vapour_factor", "null");
    assertThat(report.pages().get(0)).contains("Waterleftwithin");
    assertThat(report.outside()).isEmpty();
    assertThat(report.report().html()).contains("From 20.0", "the layers are plasterboard");
    Map<?, ?> condensation = (Map<?, ?>) ((Map<?, ?>) report.results()).get("condensation");
    Map<?, ?> wall = (Map<?, ?>) ((List<?>) condensation.get("walls")).get(0);
    assertThat(((Map<?, ?>) wall.get("year")).get("likely")).isEqualTo("accumulates");
    assertThat(((Map<?, ?>) wall.get("accumulation")).get("verdict")).isEqualTo("short");
    assertThat(Validator.broken(report.report().pdf(), "ua1")).isEmpty();
  }

  @Test
  void a_wall_of_many_layers_stays_on_its_pages_in_any_units() throws IOException {
    String pair = "{material: air gap}, {material: brick, thickness: 102 mm}, ";
    Rendered report =
        Rendered.of(
            survey(
                "irc",
                "{material: gloss paint}, {material: plasterboard, thickness: 1/2 in}, "
                    + pair.repeat(4)
                    + "{material: polystyrene, thickness: 4 in}, {material: render, thickness: 20"
                    + " mm}"));
    assertThat(report.outside()).isEmpty();
    assertThat(report.text()).contains("oz/ft²", "innerbrick", "middlebrick", "outerbrick");
  }

  @Test
  void a_dry_wall_is_told_in_few_words() throws IOException {
    Rendered report = Rendered.of(survey("england", "{material: brick, thickness: 102 mm}"));
    assertThat(report.text())
        .contains("Nowatersettleswithinthewallsthatwerelookedat", "Nowatersettlesinanymonth")
        .doesNotContain("bymonthmonth", "Whatwouldstopit");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{material: brik, thickness: 215 mm} | Y024 rooms[0].walls[0].layers[0].material | \"brick\"",
        "{material: brick} | S033 rooms[0].walls[0].layers[0].thickness | the thickness of the brick",
        "{material: brick, thickness: -215 mm} | Y021 rooms[0].walls[0].layers[0].thickness | mm",
        "{material: foil, sd: 0 m} | Y021 rooms[0].walls[0].layers[0].sd | 0.001",
        "{material: brick, thickness: 1 m, vapour_factor: 0.5} | Y021 rooms[0].walls[0].layers[0].vapour_factor | 1 to",
        "{material: brick, thickness: 1 m, conductivity: -1 W/mK} | Y021 rooms[0].walls[0].layers[0].conductivity | 0.001",
        "'' | Y031 rooms[0].walls[0].layers | ",
      })
  void what_is_wrong_with_a_layer_is_said_at_its_place(String layers, String where, String said)
      throws IOException {
    List<Problem> problems = Drysill.report(survey("england", layers)).problems();
    assertThat(problems).extracting(p -> p.code() + " " + p.key()).containsExactly(where);
    assertThat(problems.get(0).place().line()).isEqualTo(11);
    assertThat(ProblemText.of(problems.get(0))).contains(said == null ? "layers" : said);
  }
}
