package org.drysill.reference.logs;

import java.time.LocalDate;
import org.drysill.reference.Citation;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What is believed of log files.
 *
 * @param hold for how long a reading holds
 * @param clock what times are believed
 * @param believed what values are believed
 * @param spike what is taken for a spike
 * @param stuck when a sensor counts as stuck
 * @param doubtfulUnit when a unit must be stated
 */
public record LogFileRules(
    @Key(about = "For how long a reading holds") Hold hold,
    @Key(about = "What times are believed") Clock clock,
    @Key(about = "What values are believed") Believed believed,
    @Key(about = "What is taken for a spike") Spike spike,
    @Key(about = "When a sensor counts as stuck") Stuck stuck,
    @Key(about = "When a unit must be stated") DoubtfulUnit doubtfulUnit) {

  /** Reads the bundled rules. */
  public static LogFileRules bundled() {
    return DataFiles.read("defaults/log-files.yaml", LogFileRules.class);
  }

  /**
   * For how long a reading holds.
   *
   * @param steps for how many median steps at most
   * @param longestHours for how many hours at most [h]
   * @param source why so long
   */
  public record Hold(
      @Key(about = "For how many median steps at most", min = 1, max = 20) double steps,
      @Key(about = "For how many hours at most", min = 0, max = 24) double longestHours,
      @Key(about = "Why so long") Citation source) {}

  /**
   * What times are believed.
   *
   * @param setAfter no clock that was set shows an earlier day
   * @param farJumpDays a row further from the one before has a wrong date [d]
   * @param blockJumpMinutes a row further back than this begins a block [min]
   * @param source why these
   */
  public record Clock(
      @Key(about = "No clock that was set shows an earlier day") LocalDate setAfter,
      @Key(about = "A row further from the one before has a wrong date", min = 1)
          double farJumpDays,
      @Key(about = "A row further back than this begins a block", min = 1) double blockJumpMinutes,
      @Key(about = "Why these") Citation source) {}

  /**
   * What values are believed.
   *
   * @param temperature lowest and highest temperature [°C]
   * @param humidity lowest and highest relative humidity [ratio]
   * @param saturatedFrom from where a sensor counts as saturated [ratio]
   * @param co2 lowest and highest CO₂ [ppm]
   * @param source why these
   */
  public record Believed(
      @Key(
              about = "Lowest and highest temperature",
              dimension = Dimension.TEMPERATURE,
              unit = "C",
              min = -99,
              max = 99)
          Quantity temperature,
      @Key(
              about = "Lowest and highest relative humidity",
              dimension = Dimension.PERCENT,
              unit = "%",
              min = 0,
              max = 149)
          Quantity humidity,
      @Key(
              about = "From where a sensor counts as saturated",
              dimension = Dimension.PERCENT,
              unit = "%",
              min = 0,
              max = 100)
          Quantity saturatedFrom,
      @Key(
              about = "Lowest and highest CO2",
              dimension = Dimension.CONCENTRATION,
              unit = "ppm",
              min = 0)
          Quantity co2,
      @Key(about = "Why these") Citation source) {}

  /**
   * What is taken for a spike: away from both neighbours by more than this, and back.
   *
   * @param temperature of temperature [K]
   * @param humidity of relative humidity, in percentage points kept as ratio
   * @param co2 of CO₂ [ppm]
   * @param source why these
   */
  public record Spike(
      @Key(
              about = "Of temperature",
              dimension = Dimension.TEMPERATURE_DIFFERENCE,
              unit = "K",
              min = 0)
          Quantity temperature,
      @Key(
              about = "Of relative humidity in percentage points",
              dimension = Dimension.PERCENT,
              unit = "%",
              min = 0)
          Quantity humidity,
      @Key(about = "Of CO2", dimension = Dimension.CONCENTRATION, unit = "ppm", min = 0)
          Quantity co2,
      @Key(about = "Why these") Citation source) {}

  /**
   * When a sensor counts as stuck.
   *
   * @param hours for how many hours a value may stay the same [h]
   * @param source why so long
   */
  public record Stuck(
      @Key(about = "For how many hours a value may stay the same", min = 0) double hours,
      @Key(about = "Why so long") Citation source) {}

  /**
   * When a unit must be stated.
   *
   * @param above a middle temperature above this may be in °F [°C]
   * @param source why this
   */
  public record DoubtfulUnit(
      @Key(
              about = "A middle temperature above this may be in degrees Fahrenheit",
              dimension = Dimension.TEMPERATURE,
              unit = "C")
          Quantity above,
      @Key(about = "Why this") Citation source) {}
}
