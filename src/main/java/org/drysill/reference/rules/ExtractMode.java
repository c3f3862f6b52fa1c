package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** How extract runs. */
public enum ExtractMode implements Worded {
  /** Now and then, at one rate. */
  INTERMITTENT,
  /** All the time; the rate is the high one, reached when it is needed. */
  CONTINUOUS
}
