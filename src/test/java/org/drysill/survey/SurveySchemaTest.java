package org.drysill.survey;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drysill.Drysill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the reader takes, the printed schema allows. */
class SurveySchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Drysill.schema(), InputFormat.JSON);

  private static String example(String name) throws IOException {
    return Files.readString(Path.of("example-surveys", name, "survey.yaml"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat", "top-floor-flat/before"})
  void the_examples_fit(String name) throws IOException {
    assertThat(SCHEMA.validate(example(name), InputFormat.YAML)).isEmpty();
  }

  @Test
  void unknown_keys_and_words_do_not() throws IOException {
    String survey = example("1930s-terrace");
    assertThat(SCHEMA.validate(survey.replaceFirst("rooms:", "roms:"), InputFormat.YAML))
        .isNotEmpty();
    assertThat(SCHEMA.validate(survey.replaceFirst("use: kitchen", "use: x"), InputFormat.YAML))
        .isNotEmpty();
  }
}
