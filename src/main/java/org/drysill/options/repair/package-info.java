/**
 * Within step 3: the home once what comes before every measure is done.
 *
 * <p>In: an assessment and the leaks, heaters, dryers, fans and ducts that are put in order first.
 * Out: an assessment of the home as it is then, on which measures and packages are studied, and
 * what changes from today to then. What was read stays as it was read; only what follows from it
 * for later changes.
 */
package org.drysill.options.repair;
