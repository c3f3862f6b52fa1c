/**
 * Beside step 2: how NATURE works.
 *
 * <p>In: numbers with SI units. Out: numbers with SI units. Pure functions, each with the name of
 * its publication, and small value types. It may not know surveys, published requirements, files,
 * the clock or anything else of ours.
 */
package org.drysill.physics;
