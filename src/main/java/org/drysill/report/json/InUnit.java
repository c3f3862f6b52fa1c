package org.drysill.report.json;

import org.drysill.assess.Unit;
import org.drysill.physics.Range;

/**
 * A bare value whose key carries its unit, as that of a figure does.
 *
 * @param value the value, in the unit in which it is kept
 * @param unit that unit
 */
record InUnit(Range value, Unit unit) {}
