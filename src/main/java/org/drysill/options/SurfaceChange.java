package org.drysill.options;

/**
 * Months at risk of one cold place or window, before a measure and with it.
 *
 * @param place the id of the survey
 * @param name its name
 * @param glass true for a window, where condensation counts; false where mould counts
 * @param monthsBefore months at risk today
 * @param monthsAfter months at risk with the measure
 */
public record SurfaceChange(
    String place, String name, boolean glass, int monthsBefore, int monthsAfter) {}
