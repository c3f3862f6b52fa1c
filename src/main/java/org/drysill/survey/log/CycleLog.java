package org.drysill.survey.log;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.survey.CycleLogger;
import org.drysill.yaml.Problem;

/**
 * A log of the cycles of a heat recovery unit as it was read.
 *
 * @param logger what the survey says of it
 * @param sha256 SHA-256 of the bytes of the file, in hexadecimal digits; empty where it could not
 *     be read to its end
 * @param samples its readings; empty where it cannot be used
 * @param account how it was read; empty where it cannot be used
 * @param problems why it cannot be used, each with its line
 */
public record CycleLog(
    CycleLogger logger,
    String sha256,
    Optional<CycleSamples> samples,
    Optional<Account> account,
    List<Problem> problems)
    implements LogFile {
  /** Copies the list. */
  public CycleLog {
    problems = List.copyOf(problems);
  }

  /** The same, with one more problem. */
  public CycleLog with(Problem another) {
    List<Problem> all = Stream.concat(problems.stream(), Stream.of(another)).toList();
    return new CycleLog(logger, sha256, samples, account, all);
  }

  @Override
  public String file() {
    return logger.file();
  }
}
