package org.drysill.assess.ventilation;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/**
 * An air-change figure that people are told, and what it is a figure of.
 *
 * @param airChange the figure [1/h]
 * @param meaning what it is a figure of, in one sentence
 * @param wholeHome true where it speaks of the whole home all the time, so that it can be compared
 *     with a whole-home rate
 * @param flow what it would be in this home [m³/s]; empty where it is a figure for a room
 * @param source where it is printed
 */
public record QuotedAirChange(
    Range airChange, String meaning, boolean wholeHome, Optional<Figure> flow, Citation source) {}
