/**
 * Beside step 2 of 6: limits of time that the law sets for dealing with damp and mould, as data: by
 * place and tenure, from which day on, from which event to which.
 *
 * <p>Events, hazards and tenures are words of the survey format; what a survey says of them is not
 * known here.
 */
package org.drysill.reference.limits;
