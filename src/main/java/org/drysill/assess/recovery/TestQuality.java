package org.drysill.assess.recovery;

/** How much a heat recovery test can tell. */
public enum TestQuality {
  /** Indoors and outdoors were far enough apart. */
  NORMAL,
  /** Indoors and outdoors were rather close: a wide error. */
  INDICATIVE,
  /** Nothing can be told: too close, or a temperature is missing. */
  REFUSED,
  /** A log of whole cycles, which this version does not evaluate. */
  NOT_EVALUATED
}
