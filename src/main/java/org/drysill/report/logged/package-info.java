/**
 * Part of step 4: what the loggers recorded, in words, tables and charts.
 *
 * <p>In: the logs' results as they were assessed. Out: one chapter. It computes nothing but places
 * on paper: how many steps of a log make one stretch of a chart.
 */
package org.drysill.report.logged;
