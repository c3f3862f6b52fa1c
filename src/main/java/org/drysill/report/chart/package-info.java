/**
 * Charts: what they show as data of finished words and numbers, and how they are drawn.
 *
 * <p>In: a {@link org.drysill.report.chart.ChartSpec}. Out: strokes, fills and real text on a
 * canvas, be it a PDF page or an SVG element. It knows nothing of surveys and computes nothing but
 * places on paper.
 */
package org.drysill.report.chart;
