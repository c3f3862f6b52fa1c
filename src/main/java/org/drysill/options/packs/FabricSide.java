package org.drysill.options.packs;

import java.util.List;

/**
 * What the measures of a package make of windows, walls and warmth.
 *
 * @param members the members as bits
 * @param bill what they cost
 * @param glass which state of the panes goes with it
 * @param rooms of each room with cold places which of its states goes with it
 * @param safe true where none needs a safety test first
 * @param size how many members it has
 * @param stopGap true where one of them is a stop-gap
 */
record FabricSide(
    long members,
    Bill bill,
    int glass,
    List<Integer> rooms,
    boolean safe,
    int size,
    boolean stopGap) {
  FabricSide {
    rooms = List.copyOf(rooms);
  }
}
