package org.drysill.survey.log;

import java.util.Arrays;
import java.util.Optional;

/** The order in which a date is written. */
public enum DateOrder {
  /** 2026-01-22. */
  YEAR_MONTH_DAY("ymd"),
  /** 22/01/2026. */
  DAY_MONTH_YEAR("dmy"),
  /** 01/22/2026. */
  MONTH_DAY_YEAR("mdy"),
  /** 2026-22-01. */
  YEAR_DAY_MONTH("ydm");

  private final String letters;

  DateOrder(String letters) {
    this.letters = letters;
  }

  /** Which of the three numbers is the year, from 0. */
  public int year() {
    return letters.indexOf('y');
  }

  /** Which of the three numbers is the month, from 0. */
  public int month() {
    return letters.indexOf('m');
  }

  /** Which of the three numbers is the day, from 0. */
  public int day() {
    return letters.indexOf('d');
  }

  /**
   * The order that a pattern such as {@code dd/MM/yyyy HH:mm} says; empty where it lacks year,
   * month or day.
   */
  public static Optional<DateOrder> of(String pattern) {
    String plain = pattern.replace('u', 'y').replace('L', 'M');
    int year = plain.indexOf('y');
    int month = plain.indexOf('M');
    int day = plain.indexOf('d');
    if (year < 0 || month < 0 || day < 0) {
      return Optional.empty();
    }
    return Arrays.stream(values())
        .filter(o -> (o.year() < o.month()) == (year < month))
        .filter(o -> (o.year() < o.day()) == (year < day))
        .filter(o -> (o.month() < o.day()) == (month < day))
        .findFirst();
  }
}
