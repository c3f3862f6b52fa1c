package org.drysill.options;

import org.drysill.physics.Range;

/**
 * A package hour by hour, at the likely values and over samples of all that is not known.
 *
 * @param wetMornings mornings in a year on which the wettest pane is seen to be wet: likely, and
 *     what nine in ten samples lie between
 * @param walls chance that the mean of no month's hours puts a wall or corner at risk of mould
 * @param enough chance of that and of enough air
 */
public record HourlySpread(Range wetMornings, Chance walls, Chance enough) {}
