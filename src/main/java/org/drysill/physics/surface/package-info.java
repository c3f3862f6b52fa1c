/** Cold surfaces: temperature factors, surface humidity, condensation, U-values. */
package org.drysill.physics.surface;
