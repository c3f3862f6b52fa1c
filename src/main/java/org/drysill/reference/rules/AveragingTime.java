package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Over what time a value is averaged. */
public enum AveragingTime implements Worded {
  /** One day. */
  DAY,
  /** Seven days. */
  WEEK,
  /** One month. */
  MONTH
}
