/**
 * Part of step 2 of 6: what is there against what is asked, room by room and fan by fan.
 *
 * <p>In: the home, its fans' flows, a rule set. Out: findings with a verdict of three values. A
 * comparison that cannot be made is a finding too and says which reading would settle it.
 */
package org.drysill.assess.ventilation.adequacy;
