package org.drysill.report.block;

/**
 * A cell of a table by month.
 *
 * @param text the numeral
 * @param shade 0 for none to 3 for the darkest
 */
public record HeatCell(String text, String shade) {}
