package org.drysill.report.block;

/**
 * A line of a listing.
 *
 * @param number its number
 * @param text its text
 */
public record Line(String number, String text) {}
