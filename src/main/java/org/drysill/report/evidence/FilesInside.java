package org.drysill.report.evidence;

import java.util.ArrayList;
import java.util.List;
import org.drysill.report.pdf.Attachment;
import org.drysill.report.pdf.Attachment.Relation;

/** The files that travel inside a report. */
public final class FilesInside {
  /** The name of the results. */
  public static final String RESULTS = "results.json";

  private FilesInside() {}

  /**
   * The files of a report, its results last.
   *
   * @param inputs what it was made from
   * @param results its results
   */
  public static List<Attachment> of(List<InputFile> inputs, byte[] results) {
    List<Attachment> files = new ArrayList<>();
    for (InputFile input : inputs) {
      input.content().ifPresent(bytes -> files.add(attachment(input, bytes)));
    }
    files.add(
        new Attachment(
            nameOfResults(inputs.stream().map(InputFile::name).toList()),
            "application/json",
            "Every figure with its working",
            Relation.DATA,
            results));
    return files;
  }

  /** The name of the results among files of these names; a user's file may have the usual one. */
  public static String nameOfResults(List<String> names) {
    String name = RESULTS;
    while (names.contains(name)) {
      name = "report-" + name;
    }
    return name;
  }

  private static Attachment attachment(InputFile input, byte[] bytes) {
    return new Attachment(
        input.name(),
        input.mediaType(),
        input.role().description(),
        input.role() == InputRole.LOG ? Relation.DATA : Relation.SOURCE,
        bytes);
  }
}
