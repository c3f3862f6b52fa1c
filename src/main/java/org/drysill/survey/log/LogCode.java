package org.drysill.survey.log;

import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.ProblemCode;

/** Why a log cannot be used. The rest of a survey can, so each is a warning. */
public enum LogCode implements ProblemCode {
  /** Gone, closed, or broken off by the machine. */
  UNREADABLE("L001", "A log that cannot be read"),
  /** A spreadsheet, an archive, a logger's own format. */
  NOT_TEXT("L002", "A log that is no text"),
  /** Text, but no rows with a time and a number. */
  NO_TABLE("L003", "A log without a table of readings"),
  /** A name that the survey gives and the file lacks. */
  NO_SUCH_COLUMN("L004", "A log without the column that the survey names"),
  /** Nothing that looks like it. */
  COLUMN_NOT_FOUND("L005", "A log whose columns are not recognised"),
  /** Two that look like it. */
  SEVERAL_COLUMNS("L006", "A log with several columns of one quantity"),
  /** 03/04/2026. */
  DATES_AMBIGUOUS("L007", "A log whose dates can be read in two ways"),
  /** Rows, but none of use. */
  NO_USABLE_ROW("L008", "A log without a row that can be used"),
  /** 68 where nothing says of what. */
  UNIT_AMBIGUOUS("L009", "A log whose temperatures may be in °F"),
  /** A quotation mark that is never closed. */
  BROKEN_QUOTES("L010", "A log that breaks off within quotation marks"),
  /** It is used all the same. */
  FAR_FROM_VISIT("L011", "A log of another time than the visit");

  private final String code;
  private final String meaning;

  LogCode(String code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String meaning() {
    return meaning;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }
}
