/**
 * Part of step 4 of 6: the comparison of rule sets, on a page that should settle an argument.
 *
 * <p>In: what rule sets ask of the home, of its rooms, and what it gets. Out: the blocks of that
 * page. It may not compute anything.
 */
package org.drysill.report.rules;
