/**
 * Part of step 2 of 6: what a rule set asks of a home.
 *
 * <p>In: the facts of the home that rule sets count by, a rule set. Out: the rate, the term that
 * governs it, or the facts that are missing. It may not know what the home has.
 */
package org.drysill.assess.ventilation.required;
