/**
 * Step 2 of 6: what it MEANS.
 *
 * <p>In: a survey and what is published. Out: an {@code Assessment}: figures with their working,
 * findings with a verdict of three values, the assumptions that were made. It may not know files,
 * the clock, wording of the report or prices of measures.
 */
package org.drysill.assess;
