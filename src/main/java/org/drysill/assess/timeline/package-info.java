/**
 * Part of step 2 of 6: the days of a remediation against limits of time that the law sets.
 *
 * <p>In: the timeline of a survey, its place, its tenure; limits as data. Out: for each limit
 * whether the day came within it, later, or cannot be told. Nothing is said of why, or of who
 * answers for it.
 */
package org.drysill.assess.timeline;
