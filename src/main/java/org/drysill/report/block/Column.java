package org.drysill.report.block;

/**
 * A column of a table.
 *
 * @param head its heading, with the unit
 * @param numbers true for numbers, which stand at the right
 * @param widthMm its width [mm]; 0 to share what is left
 */
public record Column(String head, boolean numbers, int widthMm) {}
