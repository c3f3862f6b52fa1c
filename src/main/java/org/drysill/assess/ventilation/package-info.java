/**
 * Part of step 2 of 6: does the home get enough fresh air.
 *
 * <p>In: the home with every gap filled, published rule sets, stated default values. Out: a {@link
 * org.drysill.assess.ventilation.VentilationResult}: what is asked by each rule set, what the fans
 * and leaks provide, a finding with a verdict of three values for every comparison. It may not know
 * humidity, cold surfaces, prices or the wording of the report.
 */
package org.drysill.assess.ventilation;
