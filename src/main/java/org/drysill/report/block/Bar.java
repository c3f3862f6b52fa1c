package org.drysill.report.block;

/**
 * A bar within a table, in percent of its width, ready for the style sheet.
 *
 * @param fill to the likely value
 * @param from where the range begins
 * @param span how long the range is
 * @param tick where what is asked stands; empty where nothing is
 * @param words the same in words
 */
public record Bar(String fill, String from, String span, String tick, String words) {}
