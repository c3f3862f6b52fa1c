package org.drysill.assess.recovery;

/** How the temperatures of a test were taken. */
public enum TestForm {
  /** Single readings of an alternating unit: they depend on the moment within its cycle. */
  SINGLE_READING,
  /** Means over whole cycles, or readings of a unit that does not alternate. */
  MEANS,
  /** A log through whole cycles. */
  LOG
}
