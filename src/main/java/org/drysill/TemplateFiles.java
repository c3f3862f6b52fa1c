package org.drysill;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.evidence.InputRole;
import org.drysill.report.evidence.Sha256;
import org.drysill.report.page.OwnTemplates;

/** Templates of a user's own as files inside the report, under a folder of their own. */
public final class TemplateFiles {
  private static final String FOLDER = "templates";

  private TemplateFiles() {}

  /** The templates with their digests. */
  static List<InputFile> of(OwnTemplates own) {
    return own.texts().entrySet().stream().map(e -> of(e.getKey(), e.getValue())).toList();
  }

  private static InputFile of(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new InputFile(
        FOLDER + "/" + name, InputRole.TEMPLATE, Sha256.of(bytes), Optional.of(bytes));
  }

  /**
   * The templates among files that were inside a report.
   *
   * @param folder where those files are laid out
   * @throws IOException where they cannot be read
   */
  public static OwnTemplates in(Path folder) throws IOException {
    Path own = folder.resolve(FOLDER);
    return Files.isDirectory(own) ? OwnTemplates.read(own) : OwnTemplates.NONE;
  }
}
