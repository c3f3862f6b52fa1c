package org.drysill.assess.surfaces.year;

import java.util.function.Function;

/** What a year of hours does to a place. */
public sealed interface PlaceYear permits WallYear, GlassYear {
  /** One thing of a wall's year, or one of a pane's. */
  <T> T either(Function<WallYear, T> wall, Function<GlassYear, T> glass);
}
