package org.drysill.report.json;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Holds results against the schema that the program prints for them. */
public final class ResultsShape {
  private static final Schema SCHEMA = of(ResultsSchema.text());

  private ResultsShape() {}

  /** What the schema does not allow; empty where all is as it tells. */
  public static List<String> faults(byte[] results) {
    return faults(SCHEMA, new String(results, StandardCharsets.UTF_8));
  }

  static List<String> faults(Schema schema, String results) {
    return schema.validate(results, InputFormat.JSON).stream().map(String::valueOf).toList();
  }

  /** A schema that is held to the letter, formats of dates too. */
  static Schema of(String text) {
    SchemaRegistryConfig strict =
        SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build();
    return SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemaRegistryConfig(strict))
        .getSchema(text, InputFormat.JSON);
  }
}
