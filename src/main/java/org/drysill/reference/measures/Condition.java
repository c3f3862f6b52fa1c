package org.drysill.reference.measures;

import org.drysill.yaml.Worded;

/** What must be so in a home, or at a place of it, for a measure to be considered. */
public enum Condition implements Worded {
  /** The home does not surely get the air that is asked. */
  HOME_AIR_NOT_MET,
  /** The room does not surely get the extract that is asked. */
  EXTRACT_NOT_MET,
  /** The kitchen has no hood that leads outside. */
  NO_HOOD_TO_OUTSIDE,
  /** The room cooks without lids and hood. */
  COOKS_WITHOUT_LIDS,
  /** Clothes dry in the home. */
  DRIES_CLOTHES_INDOORS,
  /** A surface or window is at risk, or the air is moist. */
  AIR_MOIST,
  /** The place itself is at risk. */
  PLACE_AT_RISK,
  /** The window has a single pane and no second one before it. */
  SINGLE_GLAZED,
  /** The fan's pipe through the wall is metal. */
  METAL_SLEEVE,
  /** The fan's duct is slack, or its flow well below what its maker declares. */
  FLOW_LOST,
  /** The fan is out of use. */
  FAN_OUT_OF_USE,
  /** Air does not surely pass the room's doors. */
  TRANSFER_NOT_MET,
  /** The room's background ventilators do not surely suffice. */
  BACKGROUND_NOT_MET,
  /** The room is colder than people and dry walls need. */
  ROOM_COLD,
  /** The walls have a cavity that is not said to be filled or insulated. */
  CAVITY_WALLS,
  /** The walls are solid. */
  SOLID_WALLS,
  /** No fan of this kind is there yet. */
  NO_SUCH_FAN,
  /** The envelope leaks so much that air passes it unasked. */
  HOME_LEAKY,
  /** Wind drives the rain at the walls: open ground, coast, high up. */
  HOME_EXPOSED,
  /** A source of water that the measure names is listed in the room. */
  SOURCE_LISTED,
  /** Notes point to water from outside, from the ground or from a pipe. */
  WATER_INGRESS,
  /** The readings imply more water than the listed sources give. */
  MOISTURE_UNEXPLAINED
}
