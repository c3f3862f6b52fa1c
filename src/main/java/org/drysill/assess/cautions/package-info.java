/**
 * Within step 2: which hazards the facts of a survey call up.
 *
 * <p>In: a home and the published cautions. Out: the cautions that must be printed, the gravest
 * first, each with its reason, and those that belong to a measure. It judges no installation; it
 * says what to have checked and by whom.
 */
package org.drysill.assess.cautions;
