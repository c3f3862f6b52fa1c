/**
 * Heat recovery of an alternating unit from a log of temperatures through its cycles: where it
 * turns, how long it blows each way, how slow the thermometer is, and what ratio whole half-cycles
 * have. {@code CycleSearch} is the way in.
 */
package org.drysill.physics.recovery.cycle;
