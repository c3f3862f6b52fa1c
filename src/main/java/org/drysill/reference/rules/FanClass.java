package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Fans as limits of fan power tell them apart. */
public enum FanClass implements Worded {
  /** Takes air out now and then. */
  INTERMITTENT_EXTRACT,
  /** Takes air out all the time. */
  CONTINUOUS_EXTRACT,
  /** Blows air in all the time. */
  CONTINUOUS_SUPPLY,
  /** Takes air out and blows air in. */
  BALANCED
}
