package org.drysill.report.json;

import org.drysill.assess.Figure;

/**
 * The figure that a working ends in, which need not be told where its working is.
 *
 * @param figure the figure
 */
record Outcome(Figure figure) {}
