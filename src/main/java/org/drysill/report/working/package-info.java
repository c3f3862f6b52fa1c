/**
 * The way from a figure on a page to how it came about: numbers for workings, and the figures,
 * findings and assumptions of a result wherever they stand in it.
 */
package org.drysill.report.working;
