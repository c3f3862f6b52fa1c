package org.drysill.survey.log;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.drysill.survey.Logger;
import org.drysill.survey.LoggerColumns;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.read.LogReader;

/** Logs for tests: written into a folder and read from there. */
public final class LogFixtures {
  /** Limits as a program would set them, in round numbers. */
  public static final LogLimits LIMITS =
      new LogLimits(
          3,
          3600,
          Instant.parse("2005-01-01T00:00:00Z"),
          400 * 86_400.0,
          1800,
          -60,
          80,
          0.05,
          0.01,
          0.995,
          150,
          40_000,
          10,
          0.3,
          3000,
          86_400,
          45);

  private LogFixtures() {}

  /** What a survey says of a log when it names the file alone. */
  public static Logger logger(String file) {
    return new Logger(
        file,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same with a zone. */
  public static Logger in(String zone, Logger logger) {
    return new Logger(
        logger.file(),
        logger.columns(),
        logger.timePattern(),
        Optional.of(zone),
        logger.delimiter(),
        logger.decimalMark(),
        logger.temperatureUnit(),
        logger.instrument());
  }

  /** The same with a pattern of time. */
  public static Logger timed(String pattern, Logger logger) {
    return new Logger(
        logger.file(),
        logger.columns(),
        Optional.of(pattern),
        logger.zone(),
        logger.delimiter(),
        logger.decimalMark(),
        logger.temperatureUnit(),
        logger.instrument());
  }

  /** The same with a unit of temperature. */
  public static Logger measured(TemperatureUnit unit, Logger logger) {
    return new Logger(
        logger.file(),
        logger.columns(),
        logger.timePattern(),
        logger.zone(),
        logger.delimiter(),
        logger.decimalMark(),
        Optional.of(unit),
        logger.instrument());
  }

  /** The same with names of columns; an empty text for one that is not named. */
  public static Logger named(String temperature, String humidity, String co2, Logger logger) {
    return new Logger(
        logger.file(),
        Optional.of(
            new LoggerColumns(
                Optional.empty(), Optional.empty(), some(temperature), some(humidity), some(co2))),
        logger.timePattern(),
        logger.zone(),
        logger.delimiter(),
        logger.decimalMark(),
        logger.temperatureUnit(),
        logger.instrument());
  }

  private static Optional<String> some(String name) {
    return Optional.of(name).filter(n -> !n.isEmpty());
  }

  /** Reads a text as {@code log.csv}. */
  public static Log read(Path folder, String text) {
    return read(folder, text, StandardCharsets.UTF_8, logger("log.csv"));
  }

  /** Reads a text as {@code log.csv} with what a survey says of it. */
  public static Log read(Path folder, String text, Logger logger) {
    return read(folder, text, StandardCharsets.UTF_8, logger);
  }

  /** Reads a text in an encoding. */
  public static Log read(Path folder, String text, Charset charset, Logger logger) {
    return read(folder, text.getBytes(charset), logger);
  }

  /** Reads bytes. */
  public static Log read(Path folder, byte[] bytes, Logger logger) {
    try {
      Files.write(folder.resolve(logger.file()), bytes);
    } catch (IOException full) {
      throw new UncheckedIOException(full);
    }
    return new LogReader(folder, LIMITS).read(logger, Optional.empty());
  }
}
