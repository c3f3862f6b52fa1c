package org.drysill.reference.measures;

import org.drysill.yaml.Worded;

/** Which way a measure moves air. */
public enum AirMove implements Worded {
  /** Out. */
  EXTRACT,
  /** In. */
  SUPPLY,
  /** As much in as out. */
  EXCHANGE,
  /** Through leaks and openings, by wind and warmth. */
  INFILTRATION,
  /** Between rooms only. */
  TRANSFER
}
