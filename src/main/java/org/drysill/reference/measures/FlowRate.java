package org.drysill.reference.measures;

import org.drysill.yaml.Worded;

/** Which flow a measure moves while it runs. */
public enum FlowRate implements Worded {
  /** The intermittent extract rate of the rule set for the room. */
  INTERMITTENT_RATE_OF_THE_ROOM,
  /** The continuous extract rate of the rule set for the room. */
  CONTINUOUS_RATE_OF_THE_ROOM,
  /** The whole-home rate of the rule set. */
  WHOLE_HOME_RATE,
  /** The flow stated with the measure. */
  STATED,
  /** The flow that the maker of the fan that is there declares. */
  DECLARED_FLOW_OF_THE_FAN
}
