package org.drysill.survey.log;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Problem;

/** A log as it was read, whatever it holds. */
public sealed interface LogFile permits Log, CycleLog {
  /** The path of the file as the survey writes it. */
  String file();

  /**
   * SHA-256 of the bytes of the file, in hexadecimal digits; empty where it could not be read to
   * its end.
   */
  String sha256();

  /** Why it cannot be used, each with its line; warnings, for the rest of a report stands. */
  List<Problem> problems();

  /** How it was read; empty where it cannot be used. */
  Optional<Account> account();

  /**
   * How a log was read.
   *
   * @param figures what is true of the whole log
   * @param layout how the file was taken to be written
   * @param quality what is odd about it
   */
  record Account(LogFigures figures, LogLayout layout, LogQuality quality) {}
}
