/**
 * Within step 3: draws of all that is not known for sure, the same for every package.
 *
 * <p>In: what was measured, declared and assumed, each with its range. Out: for each of some
 * hundred samples what the home, the measures and the prices may be together.
 */
package org.drysill.options.draws;
