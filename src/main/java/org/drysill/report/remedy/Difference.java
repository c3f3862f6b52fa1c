package org.drysill.report.remedy;

/**
 * What two surveys say otherwise of one thing.
 *
 * @param what the thing
 * @param before what the earlier one says
 * @param after what the later one says
 */
record Difference(String what, String before, String after) {}
