/**
 * Vapour in the rooms of a home: well-mixed zones that exchange air with each other and with
 * outdoors, steady by month or hour by hour, with water that settles on panes.
 *
 * <p>All contents are counted at one temperature, that at which the flows are counted: v = p /
 * (461.5 T). Then a flow of air carries as much vapour out of one room as into the next, whatever
 * the temperatures of the two.
 */
package org.drysill.physics.zones;
