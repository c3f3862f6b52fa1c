package org.drysill.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.drysill.report.Output;
import org.drysill.report.Report;

/**
 * A report on its way to the disk.
 *
 * @param report the report
 */
record Written(Report report) {
  /** Writes its PDF, signed or not, and whatever else was asked for; a path is null where not. */
  void to(Path output, byte[] pdf, Path json, Path html) throws IOException {
    // Made before anything is written: a template may still turn out to be wrong.
    byte[] page = html == null ? null : report.html().getBytes(StandardCharsets.UTF_8);
    if (output != null) {
      Output.write(output, pdf);
    }
    if (json != null) {
      Output.write(json, report.json());
    }
    if (page != null) {
      Output.write(html, page);
    }
  }
}
