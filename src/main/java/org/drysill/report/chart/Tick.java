package org.drysill.report.chart;

/**
 * A labelled place on an axis.
 *
 * @param at the value
 * @param label its word or number as printed
 */
public record Tick(double at, String label) {}
