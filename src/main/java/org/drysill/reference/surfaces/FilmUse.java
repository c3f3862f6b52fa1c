package org.drysill.reference.surfaces;

import org.drysill.yaml.Worded;

/** Where a film resistance holds. */
public enum FilmUse implements Worded {
  /** Room side of opaque elements, for humidity at the surface. */
  WALL,
  /** Room side of corners and edges, for humidity at the surface. */
  CORNER,
  /** Behind furniture, for humidity at the surface. */
  FURNITURE,
  /** Behind curtains, beyond that of the glass. */
  CURTAIN,
  /** Room side of windows. */
  GLASS,
  /** In U-values, heat flowing sideways. */
  HEAT_FLOW_HORIZONTAL,
  /** In U-values, heat flowing upwards. */
  HEAT_FLOW_UP,
  /** In U-values, heat flowing downwards. */
  HEAT_FLOW_DOWN,
  /** Outside. */
  OUTSIDE
}
