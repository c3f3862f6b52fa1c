package org.drysill.yaml;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** Says in words why the machine did not read or write a file; it often gives only its name. */
public final class FileTrouble {
  private FileTrouble() {}

  /** The file, where the machine names it, and the reason. */
  public static String of(IOException failed) {
    return failed instanceof FileSystemException named && named.getFile() != null
        ? named.getFile() + ": " + why(failed)
        : why(failed);
  }

  /** The same trouble told of a file, where the machine names none or another. */
  public static IOException about(Path file, IOException failed) {
    FileSystemException told = new FileSystemException(file.toString(), null, why(failed));
    told.initCause(failed);
    return told;
  }

  /** The reason alone, such as {@code no such file}. */
  public static String why(IOException failed) {
    if (failed instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (failed instanceof AccessDeniedException) {
      return "no permission";
    }
    if (failed instanceof NotDirectoryException) {
      return "not a folder";
    }
    if (failed instanceof FileSystemLoopException) {
      return "a link that leads back to itself";
    }
    if (failed instanceof CharacterCodingException) {
      return "not UTF-8 text";
    }
    if (failed instanceof FileSystemException named && named.getReason() != null) {
      return lowerFirst(named.getReason());
    }
    String told = failed instanceof FileSystemException ? null : failed.getMessage();
    return told == null || told.isBlank() ? "the machine gives no reason" : lowerFirst(told);
  }

  private static String lowerFirst(String reason) {
    boolean acronym = reason.length() > 1 && Character.isUpperCase(reason.charAt(1));
    return acronym ? reason : Character.toLowerCase(reason.charAt(0)) + reason.substring(1);
  }
}
