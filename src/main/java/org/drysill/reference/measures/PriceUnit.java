package org.drysill.reference.measures;

import org.drysill.yaml.Worded;

/** What the price of a measure counts. */
public enum PriceUnit implements Worded {
  /** One piece. */
  EACH,
  /** A pair. */
  PAIR,
  /** The whole home. */
  HOME,
  /** A room. */
  ROOM,
  /** A window. */
  WINDOW,
  /** A square metre of the window or wall. */
  SQUARE_METRE
}
