package org.drysill.assess.surfaces.factor;

/** How much a surface reading can tell. */
public enum ReadingQuality {
  /** Indoors and outdoors were far enough apart. */
  NORMAL,
  /** Indoors and outdoors were rather close: a wide error. */
  WEAK,
  /** Nothing can be told: too close, or a temperature is missing. */
  REFUSED
}
