package org.drysill.assess.surfaces.year;

import java.util.function.Function;
import org.drysill.assess.Figure;

/**
 * A year of a pane.
 *
 * @param wetMornings mornings on which it carries a film of water that is seen
 * @param runningNights nights in which water runs down
 * @param worstNight the most that settles in one night, by area [kg/m²]
 */
public record GlassYear(Figure wetMornings, Figure runningNights, Figure worstNight)
    implements PlaceYear {
  @Override
  public <T> T either(Function<WallYear, T> wall, Function<GlassYear, T> glass) {
    return glass.apply(this);
  }
}
