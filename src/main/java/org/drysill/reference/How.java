package org.drysill.reference;

import org.drysill.yaml.Worded;

/** How a published figure is known to us. */
public enum How implements Worded {
  /** Read in a public copy of the source's own text. */
  SEEN,
  /** Remembered, not read again: unconfirmed, and marked so in the report. */
  MEMORY,
  /** Follows by arithmetic from other figures. */
  DERIVED,
  /** A planning assumption of ours; nothing published stands behind it. */
  ASSUMPTION,
  /** Common practice of the trade, without a document. */
  COMMON_PRACTICE
}
