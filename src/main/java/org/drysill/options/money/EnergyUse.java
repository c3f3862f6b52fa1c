package org.drysill.options.money;

import org.drysill.physics.Range;

/**
 * Energy that a measure takes and saves in a year.
 *
 * @param heatLost to warm added air, after recovery, and warmer rooms [kWh/a]
 * @param heatSaved no longer lost [kWh/a]
 * @param electricity of fans and machines [kWh/a]
 */
record EnergyUse(Range heatLost, Range heatSaved, Range electricity) {}
