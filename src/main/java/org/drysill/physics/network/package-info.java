/**
 * Rooms joined by cracks and gaps: the pressures at which every room takes in as much air as it
 * gives.
 */
package org.drysill.physics.network;
