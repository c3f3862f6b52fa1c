package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** How a home is ventilated, as rule sets tell it apart. */
public enum Strategy implements Worded {
  /** Background ventilators, with intermittent extract in wet rooms. */
  NATURAL,
  /** Extract that runs all the time, with background ventilators elsewhere. */
  CONTINUOUS_EXTRACT,
  /** Supply and extract by fans for the whole home. */
  BALANCED
}
