/**
 * Part of step 2 of 6: how fast open windows change the air of a room.
 *
 * <p>In: the rooms with their windows as seen, the weathers at which it is told. Out: {@link
 * org.drysill.assess.ventilation.airing.RoomAiring} of each room. It may not know what is asked.
 */
package org.drysill.assess.ventilation.airing;
