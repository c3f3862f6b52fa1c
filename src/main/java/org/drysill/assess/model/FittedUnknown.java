package org.drysill.assess.model;

import org.drysill.assess.Figure;

/**
 * Something that was not known for sure, before and after the readings of all rooms.
 *
 * @param name what it is, in words that can begin a table row
 * @param before what was believed without the readings
 * @param after what is believed with them
 * @param narrowed true where the readings say something of it: its bounds by factor shrink by a
 *     tenth at least
 */
public record FittedUnknown(String name, Figure before, Figure after, boolean narrowed) {}
