package org.drysill.reference.climate;

import org.drysill.yaml.ProblemCode;

/** What can be wrong with a weather file. */
public enum EpwCode implements ProblemCode {
  /** The eight header lines are not there. */
  NOT_EPW("W001", "Not a weather file in the EPW layout"),
  /** A broken row of the table. */
  MALFORMED("W002", "A row that is no comma-separated record"),
  /** A row that ends early. */
  TOO_FEW_FIELDS("W003", "A record with too few fields"),
  /** Text where a number belongs. */
  NOT_A_NUMBER("W004", "A field that is not a number"),
  /** Outside what the layout allows. */
  OUT_OF_RANGE("W005", "A field outside its range"),
  /** A month without enough records. */
  MONTH_NOT_COVERED("W006", "A month that the file does not cover"),
  /** The rest is not looked at. */
  TOO_MANY("W007", "Too many problems to list");

  private final String code;
  private final String meaning;

  EpwCode(String code, String meaning) {
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
}
