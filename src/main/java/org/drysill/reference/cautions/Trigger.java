package org.drysill.reference.cautions;

import org.drysill.yaml.Worded;

/** The facts that call for a caution. Facts that nobody has looked at count as if they were so. */
public enum Trigger implements Worded {
  /** An appliance that takes its air from the room, and a fan that takes air out. */
  OPEN_FLUE_WITH_EXTRACT,
  /** An appliance with an open flue, with or without a fan. */
  OPEN_FLUE,
  /** A heater that gives its fumes to the room. */
  UNFLUED_HEATER,
  /** A gas hob in a kitchen. */
  GAS_HOB,
  /** Anything that burns fuel. */
  COMBUSTION,
  /** A room with a bath or shower. */
  BATH_OR_SHOWER,
  /** Built before asbestos was banned, or asbestos known or suspected. */
  ASBESTOS_POSSIBLE,
  /** An area with raised radon, or nobody has looked. */
  RADON_POSSIBLE,
  /** Protected as a historic building, or nobody has looked at an old one. */
  LISTED_POSSIBLE,
  /** Mould over an area that a contractor should clean. */
  MOULD_EXTENSIVE,
  /** Any mould. */
  MOULD,
  /** People who suffer sooner. */
  VULNERABLE_OCCUPANTS,
  /** A fan that is there but does not run, or a window made to have a ventilator but shut. */
  FAN_OFF,
  /** Positive input ventilation is there. */
  POSITIVE_INPUT,
  /** A flat, where air and fire pass between homes. */
  FLAT,
  /** Water from outside or from a pipe is mentioned. */
  WATER_INGRESS,
  /** Only the work of a measure calls for it. */
  WORK
}
