package org.drysill.survey.log;

import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.ProblemCode;

/** What can be odd about rows of a log, and what becomes of it. */
public enum LogFlaw implements ProblemCode {
  /** No date and time where one belongs. */
  UNREADABLE_TIME("L101", "A row whose time cannot be read", "not used"),
  /** Fewer fields than the columns that are needed. */
  TOO_FEW_FIELDS("L102", "A row with too few fields", "not used"),
  /** The file ends within a row. */
  TRUNCATED("L103", "A last row that breaks off", "not used"),
  /** Control characters, or bytes that are no text. */
  BINARY("L104", "A row with characters that are no text", "not used"),
  /** A word, an error code or another delimiter in the place of a number. */
  NOT_A_NUMBER("L105", "A value that is no number", "not used"),
  /** 1970, 2000: what a logger writes before its clock is set. */
  CLOCK_NOT_SET("L106", "A row from before the clock of the logger was set", "not used"),
  /** A clock that was reset, or a slip in a date. */
  FAR_IN_TIME("L107", "A row years away from the row before it", "not used"),
  /** Outside what nature or the sensor allows. */
  IMPOSSIBLE("L108", "A value that cannot be", "not used"),
  /** Humidity above saturation by no more than instruments err. */
  ABOVE_SATURATION("L109", "A humidity just above 100 %", "taken as 100 %"),
  /** Away and back within one row. */
  SPIKE("L110", "A value far from both of its neighbours", "not used"),
  /** Two rows of one time. */
  DUPLICATE_TIME("L111", "A row of the same time as another", "the later one is used"),
  /** Earlier than the row above it. */
  OUT_OF_ORDER("L112", "A row that is earlier than the one before it", "put into its place"),
  /** Back by more than a row and on from there, over a time that is covered already. */
  OVERLAP("L113", "A block of rows that goes back in time", "put into its place"),
  /** Back by an hour where the zone does not say so. */
  CLOCK_SET_BACK("L114", "A clock that goes back by about an hour", "used as it stands"),
  /** Forth by an hour where the zone does not say so. */
  CLOCK_SET_FORWARD("L115", "A clock that leaps forward by about an hour", "used as it stands"),
  /** The hour that comes twice when summer time ends. */
  REPEATED_HOUR(
      "L116", "A row in the hour that the clocks repeat in autumn", "told apart by order"),
  /** The hour that the clocks skip when summer time begins. */
  SKIPPED_HOUR(
      "L117", "A row in the hour that the clocks skip in spring", "taken as not yet put forward"),
  /** No reading holds. */
  GAP("L118", "A gap between two rows", "left open"),
  /** One value for longer than air stays the same. */
  STUCK("L119", "A value that does not change for long", "used"),
  /** At the end of the scale. */
  SATURATED("L120", "A humidity of 100 %", "used"),
  /** Its fields are empty, or what stood there was refused. */
  NO_VALUE("L121", "A row without a value that can be used", "not used"),
  /** More rows than the cycles of a unit need. */
  BEYOND("L122", "A row beyond those that a log of cycles is read to", "not used");

  private final String code;
  private final String meaning;
  private final String treatment;

  LogFlaw(String code, String meaning, String treatment) {
    this.code = code;
    this.meaning = meaning;
    this.treatment = treatment;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String meaning() {
    return meaning;
  }

  /** What becomes of it, in a few words. */
  public String treatment() {
    return treatment;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }
}
