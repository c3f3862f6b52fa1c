package org.drysill.yaml;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a record: a plain scalar may stand for a mapping that has only the named key. {@code
 * measured_flow: 11 l/s} means {@code measured_flow: {value: 11 l/s}}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Shorthand {
  /** The record component that the scalar fills. */
  String value();
}
