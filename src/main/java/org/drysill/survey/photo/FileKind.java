package org.drysill.survey.photo;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of picture files that are read, told by their first bytes and not by their names. */
enum FileKind {
  JPEG("jpeg", 0xFF, 0xD8, 0xFF),
  PNG("png", 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n');

  private final String format;
  private final byte[] start;

  FileKind(String format, int... start) {
    this.format = format;
    this.start = new byte[start.length];
    for (int i = 0; i < start.length; i++) {
      this.start[i] = (byte) start[i];
    }
  }

  /** The name of its format for the image readers of the platform. */
  String format() {
    return format;
  }

  static Optional<FileKind> of(byte[] file) {
    return Arrays.stream(values()).filter(kind -> kind.begins(file)).findFirst();
  }

  private boolean begins(byte[] file) {
    return file.length >= start.length
        && Arrays.equals(file, 0, start.length, start, 0, start.length);
  }
}
