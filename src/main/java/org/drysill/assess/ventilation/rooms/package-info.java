/**
 * Part of step 2 of 6: how the air moves from room to room.
 *
 * <p>In: the home with every gap filled, and the outdoor air that it gets as a whole. Out: {@link
 * org.drysill.assess.ventilation.rooms.RoomAirResult}, the air into and out of each room by fans,
 * leaks and doors, in balance. It may not know what is asked.
 */
package org.drysill.assess.ventilation.rooms;
