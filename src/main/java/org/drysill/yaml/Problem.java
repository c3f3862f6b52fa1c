package org.drysill.yaml;

import java.util.Optional;

/**
 * One thing wrong, or odd, in a file.
 *
 * @param severity whether the file can be used all the same
 * @param code a stable code, such as {@code Y003} or {@code S012}
 * @param place where
 * @param key the path of the key, such as {@code rooms[2].fans[0].measured_flow}; empty for the
 *     file
 * @param found what stands there
 * @param expected what would be right
 * @param suggestion a nearby key or word, where one is nearly right
 * @param sourceLine the line of the file, for the caret
 */
public record Problem(
    Severity severity,
    String code,
    Place place,
    String key,
    String found,
    String expected,
    Optional<String> suggestion,
    String sourceLine) {

  /** Whether a problem stops the work. */
  public enum Severity {
    /** Nothing is written while one of these stands. */
    ERROR,
    /** The work goes on; the report repeats it. */
    WARNING
  }
}
