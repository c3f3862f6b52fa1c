package org.drysill.assess.ventilation.ducts;

import org.drysill.assess.Figure;
import org.drysill.physics.Range;

/**
 * Where a fan or a stack works: what it drives is what its duct takes up.
 *
 * @param flow the flow [m³/s]
 * @param pressure the pressure that it works against [Pa]
 * @param friction of that, lost along the duct [Pa]
 * @param bends lost in its bends [Pa]
 * @param ends lost at its ends and in what stands in it [Pa]
 */
public record FanAtWork(Figure flow, Figure pressure, Range friction, Range bends, Range ends) {}
