/**
 * Beside step 1: what can be done against damp and stale air, as data: where a measure applies,
 * what it changes, what it costs, what goes with it.
 *
 * <p>In: the files under {@code reference/measures}. Out: measures, whose conditions and effects
 * are words of closed lists. A new measure is a new entry and no code.
 */
package org.drysill.reference.measures;
