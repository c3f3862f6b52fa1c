package org.drysill.reference.limits;

import org.drysill.yaml.Worded;

/** In what a limit of time is counted. */
public enum LimitUnit implements Worded {
  /** Hours of the clock, from the moment of the event. */
  HOURS,
  /** Days but Saturdays, Sundays and public holidays, from the day after the event. */
  WORKING_DAYS,
  /** Seven days each, from the day of the event. */
  WEEKS
}
