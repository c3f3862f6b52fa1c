package org.drysill.assess.surfaces;

/** Which part of the survey a place comes from. */
public enum PlaceKind {
  /** A cold spot of a room. */
  COLD_SPOT,
  /** The middle of a pane. */
  PANE_CENTRE,
  /** The lower edge of a pane, at the spacer and frame. */
  PANE_EDGE,
  /** The frame, where it is of metal and may be colder than the pane. */
  FRAME,
  /** The coldest point that was read on a window. */
  WINDOW_AS_READ,
  /** A whole wall by its layers. */
  BUILT_UP_WALL
}
