/**
 * Beside step 1: what is taken for granted about ventilation where a survey does not say.
 *
 * <p>In: the data file of defaults. Out: typed rows, each with its source; most are planning
 * assumptions and say so.
 */
package org.drysill.reference.ventilation;
