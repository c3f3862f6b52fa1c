package org.drysill.report.subject;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.log.Logs;

/**
 * From what and by what a report was made, so that it can be made again.
 *
 * @param program the program's name
 * @param version its version
 * @param data what is published and came with it, with its version
 * @param inputs the files that were read
 */
public record Provenance(String program, String version, String data, List<Input> inputs) {
  /** Copies the list. */
  public Provenance {
    inputs = List.copyOf(inputs);
  }

  /**
   * A file that was read.
   *
   * @param name its name as the user gave it
   * @param sha256 SHA-256 of its bytes, in hexadecimal digits
   */
  public record Input(String name, String sha256) {}

  /**
   * The provenance of a report on a survey.
   *
   * @param file the survey, with the earlier one
   * @param logs its logs
   * @param logsBefore the logs of the earlier survey
   */
  public static Provenance of(
      SurveyFile file, Logs logs, Logs logsBefore, String version, String data) {
    List<Input> inputs = new ArrayList<>();
    add(inputs, file, logs);
    file.previous().ifPresent(previous -> add(inputs, previous, logsBefore));
    return new Provenance("Drysill", version, data, inputs);
  }

  private static void add(List<Input> inputs, SurveyFile file, Logs logs) {
    inputs.add(new Input(file.name(), sha256(file.text().getBytes(StandardCharsets.UTF_8))));
    file.files().forEach((name, bytes) -> inputs.add(new Input(name, sha256(bytes))));
    logs.all().map(log -> new Input(log.file(), log.sha256())).distinct().forEach(inputs::add);
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
