package org.drysill.assess.surfaces;

/** What may happen on a surface before it counts as failing. */
public enum SurfaceClass {
  /** Plaster, paper, wood: mould must find no moisture. */
  OPAQUE,
  /** Glass: it must stay dry on cold nights. */
  GLASS
}
