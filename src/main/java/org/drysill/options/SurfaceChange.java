package org.drysill.options;

import org.drysill.physics.Range;

/**
 * Months at risk in a year of one cold place or window, before a measure and with it, at the likely
 * values of everything but the measure.
 *
 * @param place the id of the survey
 * @param name its name
 * @param glass true for a window, where condensation counts; false where mould counts
 * @param monthsBefore months at risk today
 * @param monthsAfter months at risk with the measure; the ends are those of its effect
 */
public record SurfaceChange(
    String place, String name, boolean glass, int monthsBefore, Range monthsAfter) {}
