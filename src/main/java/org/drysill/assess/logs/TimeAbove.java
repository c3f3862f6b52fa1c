package org.drysill.assess.logs;

import org.drysill.assess.Figure;

/**
 * For how long the air of a room was above a humidity.
 *
 * @param limit the humidity [ratio]
 * @param time for how long [h]
 * @param share the same as a share of the time with readings [1]
 */
public record TimeAbove(double limit, Figure time, Figure share) {}
