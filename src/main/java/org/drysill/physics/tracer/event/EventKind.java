package org.drysill.physics.tracer.event;

/** What the shape of a rise or fall of vapour looks like. The shape alone proves no deed. */
public enum EventKind {
  /** A strong rise within minutes, as of a shower or bath. */
  SHOWER,
  /** A rise within an hour or so, as of cooking. */
  COOKING,
  /** A rise over many hours, as of washing that dries or of people who sleep. */
  DRYING_OR_SLEEP,
  /** A fast fall of vapour and temperature together, as of an opened window. */
  AIRING,
  /** A rise of no such shape. */
  OTHER
}
