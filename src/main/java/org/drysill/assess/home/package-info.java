/**
 * The first part of step 2: fills every gap of a survey once, so that no two chapters of a report
 * fill it in two ways.
 *
 * <p>In: a survey, an outdoor climate, the published defaults. Out: a {@link
 * org.drysill.assess.Home} with the list of what was taken for granted. It judges nothing.
 */
package org.drysill.assess.home;
