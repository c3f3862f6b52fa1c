package org.drysill.report;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.drysill.yaml.FileTrouble;

/** Writes a file whole or not at all: to a temporary file beside it, then moved into place. */
public final class Output {
  private Output() {}

  /**
   * Writes a file; an older one of the same name is replaced.
   *
   * @throws IOException when the machine fails; then nothing of the new content is left
   */
  public static void write(Path target, byte[] content) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    // Not a temporary file of the system: those are private, and a report is to be handed on.
    Path part = folder.resolve("." + target.getFileName() + ".part");
    try {
      Files.write(part, content);
      move(part, target);
    } catch (IOException failed) {
      discard(part);
      // In the name of the file that was asked for, which the part beside it is not.
      throw FileTrouble.about(target, failed);
    }
  }

  /** A part that was never begun, for its name is refused, cannot be discarded either. */
  private static void discard(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException neverBegun) {
      // What failed first is what a person can mend, and is told.
    }
  }

  private static void move(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
