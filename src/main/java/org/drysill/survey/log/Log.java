package org.drysill.survey.log;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.survey.Logger;
import org.drysill.yaml.Problem;

/**
 * One log as it was read.
 *
 * @param logger what the survey says of it, its file and instrument among it
 * @param sha256 SHA-256 of the bytes of the file, in hexadecimal digits; empty where it could not
 *     be read to its end
 * @param content what it holds; empty where it cannot be used
 * @param problems why it cannot be used, each with its line; warnings, for the rest of a report
 *     stands without it
 */
public record Log(
    Logger logger, String sha256, Optional<LogContent> content, List<Problem> problems)
    implements LogFile {
  /** Copies the list. */
  public Log {
    problems = List.copyOf(problems);
  }

  /** The same, with one more problem. */
  public Log with(Problem another) {
    List<Problem> all = Stream.concat(problems.stream(), Stream.of(another)).toList();
    return new Log(logger, sha256, content, all);
  }

  @Override
  public String file() {
    return logger.file();
  }

  @Override
  public Optional<Account> account() {
    return content.map(c -> new Account(c.figures(), c.layout(), c.quality()));
  }
}
