package org.drysill.assess.elements;

import org.drysill.physics.Range;

/**
 * A wall in one month.
 *
 * @param month 1 for January to 12
 * @param outdoorC mean temperature outdoors [°C]
 * @param settledKgM2 water that settles in the month [kg/m²]
 * @param driedKgM2 water that leaves in the month [kg/m²]
 * @param storedKgM2 water within the wall at its end [kg/m²]; the bounds of the best and the worst
 *     case
 */
public record WaterMonth(
    int month, double outdoorC, double settledKgM2, double driedKgM2, Range storedKgM2) {}
