package org.drysill.report.subject;

import java.util.List;
import java.util.Optional;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.evidence.InputRole;
import org.drysill.report.language.Language;
import org.drysill.survey.Edition;

/**
 * From what and by what a report was made, so that it can be made again.
 *
 * @param program the program's name
 * @param version its version
 * @param data the data files that came with it
 * @param ruleSet the rule set that governs, with its edition
 * @param edition the edition that was asked for, whatever the survey says
 * @param language the language that it is written in
 * @param inputs the files that were read
 * @param results the digest of the results; empty among the results themselves
 */
public record Provenance(
    String program,
    String version,
    Data data,
    String ruleSet,
    Edition edition,
    Language language,
    List<Input> inputs,
    Optional<String> results) {
  /** Copies the list. */
  public Provenance {
    inputs = List.copyOf(inputs);
  }

  /**
   * The data files that came with the program.
   *
   * @param files how many
   * @param sha256 one SHA-256 over all of them
   */
  public record Data(int files, String sha256) {}

  /**
   * A file that was read.
   *
   * @param name its name among the files inside the report
   * @param role what it was to the report
   * @param sha256 SHA-256 of its bytes, in hexadecimal digits
   * @param inside whether it is inside the report
   */
  public record Input(String name, InputRole role, String sha256, boolean inside) {
    /** A file as it is told of. */
    public static Input of(InputFile file) {
      return new Input(file.name(), file.role(), file.sha256(), file.content().isPresent());
    }
  }

  /** The same with the digest of the results. */
  public Provenance withResults(String sha256) {
    return new Provenance(
        program, version, data, ruleSet, edition, language, inputs, Optional.of(sha256));
  }
}
