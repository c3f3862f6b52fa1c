package org.drysill.assess;

import java.util.function.Supplier;
import org.drysill.physics.Range;

/**
 * A computed value that may reach the report, never without its working.
 *
 * @param id stable id, words joined by dots, such as {@code ventilation.whole_home.required} or
 *     {@code room.kitchen.dew_point}; unique in an assessment
 * @param name what it is, in words that can stand in a sentence
 * @param value the value, in {@code unit}
 * @param unit the unit in which it is kept
 * @param basis on what it rests
 * @param how makes the working; called only where the working is asked for
 */
public record Figure(
    String id, String name, Range value, Unit unit, Basis basis, Supplier<Working> how) {
  /** How the figure came about. */
  public Working working() {
    return how.get();
  }

  /** The likely value, in {@code unit}. */
  public double likely() {
    return value.likely();
  }
}
