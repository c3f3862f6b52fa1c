package org.drysill.survey;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.drysill.yaml.JsonSchema;
import org.drysill.yaml.Vocabularies;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema held against an independent validator. */
class SurveySchemaTest {
  private static final Path SURVEYS = Path.of("src/test/resources/surveys");
  private static final Vocabularies WORDS =
      new Vocabularies(Map.of("rule set", List.of("england"), "glazing", List.of("single")));
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(JsonSchema.of(Survey.class, WORDS, "A survey"), InputFormat.JSON);

  @ParameterizedTest
  @ValueSource(strings = {"everything.yaml", "format-1.yaml", "consistent.yaml", "earlier.yaml"})
  void a_survey_that_reads_is_valid(String name) throws IOException {
    String text = Files.readString(SURVEYS.resolve(name));
    assertThat(SCHEMA.validate(text, InputFormat.YAML)).isEmpty();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "drysill: 1 | drysill: 2",
        "floor_area: 40 m2 | floor_aera: 40 m2",
        "date: 2026-01-22 | reference: x",
        "date: 2026-01-22 | date: 22/01/2026",
        "floor_area: 40 m2 | floor_area: large",
        "floor_area: 40 m2 | floor_area: 2",
        "use: bedroom | use: bedrom",
        "jurisdiction: england | jurisdiction: atlantis",
        "bedrooms: 1 | bedrooms: many",
        "paired_with: f2 | paired_with: [f2]",
      })
  void a_wrong_survey_is_not_valid(String was, String becomes) throws IOException {
    String text = Files.readString(SURVEYS.resolve("consistent.yaml"));
    assertThat(text).contains(was);
    assertThat(SCHEMA.validate(text.replace(was, becomes), InputFormat.YAML)).isNotEmpty();
  }
}
