/**
 * Beside step 1: prices of energy, carbon factors and the terms of counting money, as dated
 * defaults for what a survey does not say.
 *
 * <p>In: the files under {@code reference/prices} and {@code reference/defaults/money.yaml}. Out:
 * each value with its date and source. A tariff that the survey states always goes before these.
 */
package org.drysill.reference.prices;
