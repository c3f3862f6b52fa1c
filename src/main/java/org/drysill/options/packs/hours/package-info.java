/**
 * Within step 3: packages hour by hour in many samples.
 *
 * <p>In: the hours outdoors, what rooms and panes are in a state of their fabric, the zones of a
 * package in a sample. Out: mornings with wet glass, and whether a month of a wall or corner is at
 * risk. It finds what following every hour of every surface finds, without what cannot matter: half
 * days in which no pane can be wet and no film is left are passed over, with a bound that is on the
 * safe side. It may not know measures, money or the survey.
 */
package org.drysill.options.packs.hours;
