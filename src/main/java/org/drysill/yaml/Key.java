package org.drysill.yaml;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a YAML key means: written at the record component that the key fills. The key is the
 * component's name in snake case; a component of type {@code Optional}, {@code List} or {@code Map}
 * may be missing, every other one is required.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {
  /** One line for the person who writes the file: what it is. */
  String about();

  /** What kind of quantity a {@link Quantity} is. */
  Dimension dimension() default Dimension.NUMBER;

  /** The unit that a bare number means; a symbol that {@link #dimension} knows. */
  String unit() default "";

  /** Lowest value that is possible, in {@link #unit}; below it is an error. */
  double min() default Double.NEGATIVE_INFINITY;

  /** Highest value that is possible, in {@link #unit}; above it is an error. */
  double max() default Double.POSITIVE_INFINITY;

  /** Lowest value that is plausible, in {@link #unit}; below it is a warning. */
  double low() default Double.NEGATIVE_INFINITY;

  /** Highest value that is plausible, in {@link #unit}; above it is a warning. */
  double high() default Double.POSITIVE_INFINITY;

  /** An example as one would write it. */
  String example() default "";

  /**
   * The name of the vocabulary that a text must come from (such as {@code glazing}), handed to the
   * reader by its caller; empty when any text will do.
   */
  String vocabulary() default "";

  /** True for a path to a file beside the survey, which must exist and lie in its folder. */
  boolean file() default false;

  /** True for an id that must be unique among all ids of the document. */
  boolean id() default false;

  /** True for a list or map that must be there, with one entry at least. */
  boolean required() default false;

  /** How many entries a list must have where it is there; 0 for any number. */
  int size() default 0;
}
