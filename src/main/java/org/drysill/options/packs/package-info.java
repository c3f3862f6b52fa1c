/**
 * Within step 3: every sensible combination of measures, by month.
 *
 * <p>In: the single measures that work, with their money, and the home as zones. Out: packages in
 * the order in which they deserve the money, what each of their steps achieves, what belongs to all
 * of the best and what to none.
 *
 * <p>A package is an air side, which changes vapour, and a fabric side, which changes what surfaces
 * bear. The vapour of an air side is solved once and held against many fabric sides.
 */
package org.drysill.options.packs;
