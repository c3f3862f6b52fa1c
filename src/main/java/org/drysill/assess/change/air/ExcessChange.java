package org.drysill.assess.change.air;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;

/**
 * How the vapour that is in a room on top of outdoors changed.
 *
 * @param before vapour pressure excess [Pa]
 * @param after vapour pressure excess [Pa]
 * @param change after less before [Pa]
 * @param relative the same as a share of the excess before, as a ratio; empty where that cannot be
 *     told from none
 * @param contentBefore vapour excess by volume of air [kg/m³]
 * @param contentAfter vapour excess by volume of air [kg/m³]
 * @param contentChange after less before [kg/m³]
 * @param judgement whether {@code change} is shown
 */
public record ExcessChange(
    Figure before,
    Figure after,
    Figure change,
    Optional<Figure> relative,
    Figure contentBefore,
    Figure contentAfter,
    Figure contentChange,
    Judgement judgement) {}
