package org.drysill.assess.change.place;

import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;

/**
 * How the area with mould changed, of a place or of all places together.
 *
 * @param before area with mould then [m²]
 * @param after area with mould now [m²]
 * @param change after less before [m²]
 * @param judgement whether it is shown, by the error of areas that are estimated by eye
 */
public record MouldChange(Figure before, Figure after, Figure change, Judgement judgement) {}
