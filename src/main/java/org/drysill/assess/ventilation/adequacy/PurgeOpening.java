package org.drysill.assess.ventilation.adequacy;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * How a habitable room can be aired quickly.
 *
 * @param finding area of its openings against the published share of the floor
 * @param required the flow that the rule set asks for while airing [m³/s], where it prints one
 * @param airing the flow to be expected through the open windows [m³/s], for information
 */
public record PurgeOpening(Finding finding, Optional<Figure> required, Optional<Figure> airing) {}
