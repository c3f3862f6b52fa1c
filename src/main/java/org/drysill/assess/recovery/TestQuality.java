package org.drysill.assess.recovery;

/** How much a heat recovery test can tell. */
public enum TestQuality {
  /** Indoors and outdoors were far enough apart, and a log was long and fine enough. */
  NORMAL,
  /** Indoors and outdoors were rather close, or a log was short, coarse or slow: a wide error. */
  INDICATIVE,
  /** Nothing can be told: too close, a temperature is missing, or a log shows no cycle. */
  REFUSED
}
