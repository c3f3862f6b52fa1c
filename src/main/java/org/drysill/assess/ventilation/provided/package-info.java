/**
 * Part of step 2 of 6: the outdoor air that a home gets from its fans and through its leaks.
 *
 * <p>In: the home with every gap filled, stated default values. Out: {@link
 * org.drysill.assess.ventilation.provided.ProvidedAir}, each fan of the survey with what it counts
 * for and why. It may not know what is asked.
 */
package org.drysill.assess.ventilation.provided;
