package org.drysill.yaml;

import java.util.List;
import java.util.Optional;

/**
 * What reading a file gave.
 *
 * @param value the record; empty when there was at least one error
 * @param problems errors and warnings in the order of the file
 * @param draft the record without the optional parts that were refused, for checks that look for
 *     further problems; empty where a required part was
 * @param places where each key stands
 * @param <T> the record type
 */
public record Reading<T>(
    Optional<T> value, List<Problem> problems, Optional<T> draft, Places places) {
  /** Copies the list. */
  public Reading {
    problems = List.copyOf(problems);
  }
}
