package org.drysill.reference.surfaces;

import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.reference.materials.MaterialCatalogue;
import org.drysill.reference.readings.ReadingRules;

/**
 * All tables that the assessment of surfaces reads.
 *
 * @param glazing kinds of glazing
 * @param materials layers
 * @param surfaces films, limits, critical factors
 * @param details typical details
 * @param defaults what is taken for granted
 * @param hours what is taken for granted hour by hour
 * @param readings what readings are worth, and when two of them belong together
 */
public record SurfaceTables(
    GlazingCatalogue glazing,
    MaterialCatalogue materials,
    SurfaceCatalogue surfaces,
    TypicalDetails details,
    SurfaceDefaults defaults,
    HourDefaults hours,
    ReadingRules readings) {
  /** Reads the bundled tables. */
  public static SurfaceTables bundled() {
    return new SurfaceTables(
        GlazingCatalogue.bundled(),
        MaterialCatalogue.bundled(),
        SurfaceCatalogue.bundled(),
        TypicalDetails.bundled(),
        SurfaceDefaults.bundled(),
        HourDefaults.bundled(),
        ReadingRules.bundled());
  }
}
