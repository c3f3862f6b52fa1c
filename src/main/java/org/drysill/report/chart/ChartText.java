package org.drysill.report.chart;

/**
 * The words around a chart, printed by the page and not by the chart itself.
 *
 * @param title the sentence that states the message
 * @param unit what the axis counts, with its unit
 * @param source where the data come from
 * @param alt what someone who cannot see the chart must know: the message and its numbers
 */
public record ChartText(String title, String unit, String source, String alt) {}
