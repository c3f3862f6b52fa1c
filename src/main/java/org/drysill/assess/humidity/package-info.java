/**
 * What the readings of a visit say about the moisture in the air: dew point, vapour pressure and
 * content, the excess over outdoors, humidity class, thresholds, CO₂.
 */
package org.drysill.assess.humidity;
