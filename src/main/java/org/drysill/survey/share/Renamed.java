package org.drysill.survey.share;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** On a key of a survey: a copy that is shared has a neutral word in the place of what it says. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Renamed {
  /** What the word is. */
  As value();

  /** What a word can be. */
  enum As {
    /** The short name of a room, window, cold spot, wall or fan, or what refers to one. */
    ID,
    /** The name of what has such a short name. */
    NAME,
    /** The short name of an instrument, or what refers to one. */
    INSTRUMENT,
    /** The path of a file. */
    FILE,
    /** The address of the home. */
    ADDRESS
  }
}
