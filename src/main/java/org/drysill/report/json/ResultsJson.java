package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.drysill.report.subject.Subject;

/** The results file: every figure that was computed, by the names of the survey format. */
public final class ResultsJson {
  private ResultsJson() {}

  /**
   * Writes the results of a survey; {@link ResultsSchema} tells their shape.
   *
   * @param subject the survey with what was made of it
   * @return UTF-8 text
   */
  public static byte[] of(Subject subject) {
    return of(Results.of(subject));
  }

  /** A record with its components, one section each. */
  static byte[] of(Record results) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    JsonFactory factory =
        JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
    try (JsonGenerator json = factory.createGenerator(bytes)) {
      json.setPrettyPrinter(new OneThingALine());
      new RecordJson(json).value(results);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
