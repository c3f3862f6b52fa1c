package org.drysill.assess.surfaces.year;

import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Figure;
import org.drysill.reference.surfaces.MaterialSensitivity;

/**
 * A year of an opaque surface that is clean in the warmest month.
 *
 * @param moistHours hours in which the air at it is moist enough for mould
 * @param wetHours hours in which it is wet
 * @param mould highest mould index of the year, 0 to 6
 * @param material how readily mould grows on it
 * @param begins when growth begins that a microscope shows, at the likely values; empty if never
 * @param visible when it can be seen by eye, at the likely values; empty if never
 */
public record WallYear(
    Figure moistHours,
    Figure wetHours,
    Figure mould,
    MaterialSensitivity material,
    Optional<DayOfYear> begins,
    Optional<DayOfYear> visible)
    implements PlaceYear {
  @Override
  public <T> T either(Function<WallYear, T> wall, Function<GlassYear, T> glass) {
    return wall.apply(this);
  }
}
