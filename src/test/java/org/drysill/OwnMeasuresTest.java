package org.drysill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.drysill.yaml.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Measures that a survey brings itself. */
class OwnMeasuresTest {
  private static final String OWN =
      """
      measures:
        - id: bath-cover
          name: cover on the bath
          title: Cover kept on the bath while it fills
          place: home
          when: [air moist]
          changes: 'Less steam rises, and boxes of salt take what does.'
          moisture:
            sources: [shower]
            removed_kg_per_day: {value: 6, between: 4..8}
            source: {document: Trial at home, how: assumption}
          price: {low: 5, likely: 10, high: 20, unit: home, currency: GBP, year: 2025,
            source: {document: Quote of a shop, how: seen}}
          life_years: 5
          upkeep: 0
          side_effects: ['It has to be put somewhere.']
          cautions: [vulnerable-people]
          benefits: {}
      """;

  @TempDir private Path folder;

  private Path survey(String options) throws IOException {
    String text = OptionsFixtures.text("small-flat") + "options: " + options + "\n";
    return Files.writeString(folder.resolve("survey.yaml"), text);
  }

  private Drysill.Made made(String measures, String options) throws IOException {
    Files.writeString(folder.resolve("mine.yaml"), measures);
    return Drysill.report(survey(options));
  }

  private static String json(Drysill.Made made) {
    assertThat(made.problems()).allMatch(p -> p.severity() == Problem.Severity.WARNING);
    return new String(made.report().orElseThrow().json(), StandardCharsets.UTF_8);
  }

  @Test
  void an_own_measure_is_studied_and_its_file_is_among_the_inputs()
      throws IOException, NoSuchAlgorithmException {
    String json = json(made(OWN, "{measures: mine.yaml}"));
    assertThat(json).contains("bath-cover.home", "Cover kept on the bath while it fills");
    String hash =
        HexFormat.of()
            .formatHex(
                MessageDigest.getInstance("SHA-256").digest(OWN.getBytes(StandardCharsets.UTF_8)));
    assertThat(json).contains("mine.yaml", hash);
  }

  @Test
  void an_own_measure_can_be_left_out_and_priced_by_its_name() throws IOException {
    assertThat(json(made(OWN, "{measures: mine.yaml, exclude: [cover on the bath]}")))
        .contains("the survey asks to leave it out")
        .doesNotContain("bath-cover.home");
    assertThat(json(made(OWN, "{measures: mine.yaml, prices: {cover on the bath: 7}}")))
        .contains("bath-cover.home");
  }

  @Test
  void one_with_the_id_of_a_bundled_measure_takes_its_place() throws IOException {
    String own =
        OWN.replace("bath-cover", "purge-habit")
            .replace("name: cover on the bath", "name: purge airing");
    assertThat(json(made(own, "{measures: mine.yaml}")))
        .contains("Cover kept on the bath")
        .doesNotContain("Windows opened wide after showers");
  }

  private void refused(String measures, int line, String found, String expected)
      throws IOException {
    Drysill.Made made = made(measures, "{measures: mine.yaml}");
    assertThat(made.report()).isEmpty();
    assertThat(made.problems())
        .anySatisfy(
            p -> {
              assertThat(p.severity()).isEqualTo(Problem.Severity.ERROR);
              assertThat(p.place().file()).isEqualTo("mine.yaml");
              assertThat(p.place().line()).isEqualTo(line);
              assertThat(p.found()).contains(found);
              assertThat(p.expected() + p.suggestion().orElse("")).contains(expected);
            });
  }

  @Test
  void what_is_wrong_with_one_is_told_where_it_stands() throws IOException {
    refused(OWN.replace("[vulnerable-people]", "[vulnerable-peple]"), 17, "peple", "people");
    refused(OWN.replace("sources: [shower]", "sources: [showr]"), 9, "showr", "shower");
    refused(OWN.replace("likely: 10", "likely: 30"), 12, "", "that rise");
    refused(OWN.replace("name: cover on the bath", "name: purge airing"), 3, "purge", "no other");
    refused(OWN.replace("life_years", "life_yeers"), 14, "life_yeers", "life_years");
    refused(
        OWN.replace(
            "cautions:",
            "prerequisites: [{says: 'x.', when: [air moist], by: [loft-hatsch]}]\n    cautions:"),
        17,
        "loft-hatsch",
        "loft-hatch");
    refused(OWN.replaceFirst("(?s)moisture:.*?price:", "price:"), 2, "", "air, moisture, surface");
  }

  private void refusedEffect(String effect, String expected) throws IOException {
    String own =
        OWN.replaceFirst(
            "(?s)    moisture:.*?    price:",
            "    " + effect.replace("SOURCE", "{document: x, how: assumption}") + "\n    price:");
    refused(own, 8, "", expected);
  }

  /** Nothing gives back more than it takes, runs for 30 hours a day or lasts no year. */
  @Test
  void what_nothing_can_do_is_refused() throws IOException {
    refusedEffect("moisture: {share_avoided: 1.2, source: SOURCE}", "share_avoided from 0 to 1");
    refusedEffect("moisture: {removed_kg_per_day: -1, source: SOURCE}", "of 0 or more");
    String points =
        "{celsius: 20, removed_kg_per_day: %s, kwh_per_kg: 1}, {celsius: 20, removed_kg_per_day: 3,"
            + " kwh_per_kg: 1}";
    String machine = "moisture: {by_temperature: [" + points + "], source: SOURCE}";
    refusedEffect(machine.formatted(1), "the coldest first, each once");
    refusedEffect(machine.formatted(-1), "water and electricity of 0 or more");
    String fan = "air: {moves: supply, rate: stated, litres_per_second: 9, %s, source: SOURCE}";
    refusedEffect(fan.formatted("hours_per_day: 30"), "hours_per_day from 0 to 24");
    refusedEffect(fan.formatted("declared_recovery: 1.1"), "in_use from 0 to 1");
    refusedEffect(fan.formatted("in_use: 1.1"), "in_use from 0 to 1");
    refusedEffect(fan.replace("9, %s", "-9"), "litres_per_second of 0 or more");
    refusedEffect("surface: {shortfall_removed: 1.5, source: SOURCE}", "from 0 to 1");
    refusedEffect("surface: {u_value_after: 0, source: SOURCE}", "from 0.05 to 10");
    refusedEffect("warmth: {raises_by: -1, kwh_per_kelvin_m2: 8, source: SOURCE}", "raises_by and");
    refused(OWN.replace("value: 6, between", "value: 9, between"), 10, "", "within its bounds");
    refused(OWN.replace("life_years: 5", "life_years: 0"), 14, "0", "1 to 200");
    refused(OWN.replace("upkeep: 0", "upkeep: -1"), 2, "", "upkeep of 0 or more");
    refused(OWN.replace("upkeep: 0", "upkeep: 0\n    power: -1"), 2, "", "power and");
  }

  @Test
  void a_fan_that_takes_air_out_has_to_warn_of_open_flues() throws IOException {
    String fan =
        OWN.replaceFirst(
            "(?s)moisture:.*?price:",
            "air:\n      moves: extract\n      rate: whole home rate\n      source: {document: x, how:"
                + " assumption}\n    price:");
    refused(fan, 17, "vulnerable-people", "open-flue-with-extract");
    json(
        made(
            fan.replace("[vulnerable-people]", "[open-flue-with-extract]"),
            "{measures: mine.yaml}"));
  }

  @Test
  void the_file_may_not_leave_the_folder_and_must_be_there() throws IOException {
    assertThat(Drysill.report(survey("{measures: ../mine.yaml}")).problems())
        .extracting(Problem::code)
        .contains("Y026");
    assertThat(Drysill.report(survey("{measures: none.yaml}")).problems())
        .extracting(Problem::code)
        .contains("Y027");
  }
}
