package org.drysill.options.packs.hours;

/**
 * A year of a home.
 *
 * @param wetMornings mornings on which its wettest pane is seen to be wet
 * @param sound true where the mean of no month's hours puts a wall or corner at risk of mould
 */
public record YearOutcome(int wetMornings, boolean sound) {}
