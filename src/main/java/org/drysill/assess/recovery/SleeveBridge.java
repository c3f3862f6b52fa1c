package org.drysill.assess.recovery;

import org.drysill.assess.Figure;

/**
 * The pipe of a unit as a cold bridge: a bounded estimate of conduction along the pipe alone, with
 * still air in it.
 *
 * @param conductance along the pipe from end to end [W/K]
 * @param innerEnd temperature factor of its inner end
 * @param alternative the same of a plastic pipe of the same size
 * @param words the result in one plain sentence
 */
public record SleeveBridge(Figure conductance, Figure innerEnd, Figure alternative, String words) {}
