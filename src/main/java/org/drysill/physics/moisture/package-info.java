/** Vapour in a room: its balance, the ISO 13788 humidity classes, indoor climate by outdoor. */
package org.drysill.physics.moisture;
