package org.drysill.reference.glazing;

import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * How a metal frame moves the temperature factor of the pane's lower edge.
 *
 * @param metalFrame the factor in a metal frame without thermal break, whatever the panes
 * @param metalFrameWithBreakLowersBy by how much a metal frame with a break lowers the factor
 * @param source where it comes from
 */
public record GlassEdges(
    @Key(about = "Temperature factor in a metal frame without break", example = "0.20..0.40")
        Spread metalFrame,
    @Key(about = "By how much a metal frame with a break lowers the factor", example = "0.05")
        Spread metalFrameWithBreakLowersBy,
    @Key(about = "Where it comes from") Citation source) {}
