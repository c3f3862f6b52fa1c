package org.drysill.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Properties;
import java.util.TreeSet;
import org.drysill.assess.Figure;
import org.drysill.assess.Verdict;
import org.drysill.reference.Citation;
import org.junit.jupiter.api.Test;

class ResultsSchemaTest {
  record Inner(Figure humidity, Optional<Figure> rate) {}

  sealed interface Either permits This, That {}

  record This(int count) implements Either {}

  record That(boolean flag) implements Either {}

  record Whole(
      @Beside Inner inner,
      Verdict verdict,
      List<Optional<Double>> many,
      OptionalDouble perhaps,
      Citation source,
      Optional<Either> either) {}

  private static ResultTexts texts(Map<String, String> units) {
    Properties said = new Properties();
    Properties given = new Properties();
    units.forEach((key, unit) -> given.setProperty("report.json.ResultsSchemaTest." + key, unit));
    for (String type : List.of("Whole", "Inner", "Either", "This", "That")) {
      said.setProperty("report.json.ResultsSchemaTest." + type, "what it is");
    }
    for (String part :
        List.of(
            "Inner.humidity",
            "Inner.rate",
            "Whole.verdict",
            "Whole.many",
            "Whole.perhaps",
            "Whole.source",
            "Whole.either",
            "This.count",
            "That.flag")) {
      said.setProperty("report.json.ResultsSchemaTest." + part, "how much it is [x]");
    }
    return new ResultTexts(said, given);
  }

  private static final Map<String, String> UNITS =
      Map.of("Inner.humidity", "RELATIVE_HUMIDITY", "Inner.rate", "AIRFLOW AIR_CHANGE");

  private static final String FIGURE =
      "{\"low\":1,\"likely\":2,\"high\":null,\"basis\":\"measured\",\"working\":\"a\"}";

  private static List<String> faults(String results) {
    Schema schema = ResultsShape.of(ResultsSchema.of(Whole.class, texts(UNITS)));
    return ResultsShape.faults(schema, results.replace("FIGURE", FIGURE));
  }

  @Test
  void what_is_written_as_the_records_say_fits() {
    assertThat(
            faults(
                "{\"humidity_percent\":FIGURE,\"rate_ach\":FIGURE,\"verdict\":\"short\","
                    + "\"many\":[1,null],\"source\":\"a document\",\"either\":{\"flag\":true}}"))
        .isEmpty();
    assertThat(
            faults(
                "{\"humidity_percent\":FIGURE,\"verdict\":\"unknown\",\"many\":[],"
                    + "\"perhaps\":0.5,\"source\":\"a document\"}"))
        .isEmpty();
  }

  @Test
  void other_units_words_types_and_keys_do_not() {
    String good = "\"verdict\":\"short\",\"many\":[],\"source\":\"a\"";
    assertThat(faults("{" + good + "}")).singleElement().asString().contains("humidity_percent");
    String whole = "\"humidity_percent\":FIGURE," + good;
    assertThat(faults("{" + whole + "}")).isEmpty();
    assertThat(faults("{" + whole + ",\"rate_pa\":FIGURE}")).isNotEmpty();
    assertThat(faults("{" + whole + ",\"perhaps\":\"1\"}")).isNotEmpty();
    assertThat(faults("{" + whole + ",\"either\":{\"count\":1.5}}")).isNotEmpty();
    assertThat(faults("{" + whole.replace("short", "good") + "}")).isNotEmpty();
    assertThat(faults("{" + whole.replace("[]", "[\"x\"]") + "}")).isNotEmpty();
  }

  /** A figure that must be there may have one of several units, and then stands once. */
  @Test
  void of_several_units_one_is_told() {
    record Compared(Figure provided) {}
    Properties said = new Properties();
    String name = ResultTexts.name(Compared.class);
    said.setProperty(name, "a comparison");
    said.setProperty(name + ".provided", "what is there");
    Properties units = new Properties();
    units.setProperty(name + ".provided", "AIRFLOW PASCAL");
    Schema schema = ResultsShape.of(ResultsSchema.of(Compared.class, new ResultTexts(said, units)));
    assertThat(ResultsShape.faults(schema, "{\"provided_pa\":FIGURE}".replace("FIGURE", FIGURE)))
        .isEmpty();
    assertThat(ResultsShape.faults(schema, "{}")).isNotEmpty();
  }

  @Test
  void figures_are_described_in_the_unit_of_the_file_and_not_of_the_code() {
    assertThat(ResultsSchema.of(Whole.class, texts(UNITS)))
        .contains("\"How much it is. Unit: percent.\"", "\"How much it is. Unit: l/s.\"")
        .contains("\"How much it is [x].\"");
  }

  @Test
  void a_figure_of_which_no_unit_is_kept_may_have_any() {
    assertThat(ResultsSchema.of(Whole.class, texts(Map.of())))
        .contains("\"humidity_percent\"", "\"humidity_pa\"");
  }

  @Test
  void what_nobody_says_a_word_of_is_found_when_the_schema_is_made() {
    ResultTexts silent = new ResultTexts(new Properties(), new Properties());
    assertThatThrownBy(() -> ResultsSchema.of(Whole.class, silent))
        .hasMessageContaining("nothing is said of");
  }

  @Test
  void the_meanings_are_what_the_comments_of_the_records_say() throws IOException {
    assertThat(ResultMeanings.text()).isEqualTo(Files.readString(ResultMeanings.FILE));
  }

  @Test
  void no_unit_is_kept_for_what_is_no_longer_told() {
    Properties kept = ResultTexts.read("units.properties");
    TreeSet<String> asked = new TreeSet<>();
    Properties noting =
        new Properties() {
          @Override
          public String getProperty(String key) {
            asked.add(key);
            return kept.getProperty(key);
          }
        };
    ResultTexts bundled = new ResultTexts(ResultTexts.read("meanings.properties"), noting);
    ResultsSchema.of(Results.class, bundled);
    assertThat(asked).containsAll(kept.stringPropertyNames());
  }

  @Test
  void it_is_a_schema_of_its_draft() {
    Schema draft =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(draft.validate(ResultsSchema.text(), InputFormat.JSON)).isEmpty();
  }
}
