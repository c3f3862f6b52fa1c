package org.drysill.options.packs.hours;

import java.util.List;
import org.drysill.physics.zones.ExcessLanes;

/**
 * Packages that do the same to air, water and panes, so that their zones go through the same year;
 * what they do to walls may differ.
 *
 * @param zones the home with them in each sample
 * @param glass the panes that take water
 * @param rooms of each package the rooms with cold places
 */
public record HourlyPackages(ExcessLanes zones, HourlyGlass glass, List<List<HourlyRoom>> rooms) {
  /** Copies the list. */
  public HourlyPackages {
    rooms = List.copyOf(rooms);
  }
}
