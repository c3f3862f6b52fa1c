package org.drysill.report.block;

/**
 * How one figure came about by the formula of its family.
 *
 * @param number its number, such as {@code w12} or {@code w12.3}
 * @param name what it is
 * @param value its value with unit and bounds
 * @param basis on what it rests
 * @param inputs what was put in; empty where the formula needs nothing
 * @param note what else a checker should know of this figure; may be empty
 */
public record WorkingEntry(
    String number, String name, String value, String basis, String inputs, String note) {}
