package org.drysill.report.evidence;

import java.util.Locale;
import java.util.Optional;

/**
 * A file that a report was made from.
 *
 * @param name its path among the files inside the report, with / between the parts: the paths by
 *     which surveys name files lead from file to file there as they did on disk
 * @param role what it was to the report
 * @param sha256 SHA-256 of its bytes, in hexadecimal digits
 * @param content its bytes; empty where it is not inside the report
 */
public record InputFile(String name, InputRole role, String sha256, Optional<byte[]> content) {
  /** The most bytes of a file that is put inside. */
  public static final long MOST_BYTES = 8L * 1024 * 1024;

  /** The most bytes of all files that are put inside. */
  public static final long MOST_BYTES_TOGETHER = 24L * 1024 * 1024;

  /** Which files are inside, for its readers. */
  public static final String WHAT_IS_INSIDE =
      "Photographs, and files of more than 8 MB, are not inside.";

  /** The media type by the ending of the name. */
  public String mediaType() {
    return switch (name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT)) {
      case "yaml", "yml" -> "application/yaml";
      case "csv" -> "text/csv";
      case "tsv" -> "text/tab-separated-values";
      case "txt", "epw", "log" -> "text/plain";
      case "json" -> "application/json";
      case "jpg", "jpeg" -> "image/jpeg";
      case "png" -> "image/png";
      default -> "application/octet-stream";
    };
  }
}
