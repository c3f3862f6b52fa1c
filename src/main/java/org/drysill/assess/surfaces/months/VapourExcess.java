package org.drysill.assess.surfaces.months;

import java.util.function.DoubleFunction;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;

/**
 * By how much the vapour pressure indoors exceeds that outdoors.
 *
 * @param at the excess [Pa] by outdoor temperature [°C]
 * @param origin the excess that it was carried on from, as an input of a working
 */
public record VapourExcess(DoubleFunction<Range> at, Input origin) {}
