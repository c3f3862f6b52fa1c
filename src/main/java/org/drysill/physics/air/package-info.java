/** Moist air: saturation, dew point, vapour content, enthalpy, density, wet bulb. */
package org.drysill.physics.air;
