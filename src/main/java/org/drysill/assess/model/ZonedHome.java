package org.drysill.assess.model;

import java.util.List;

/**
 * The home as zones, at the likely values that its readings leave: what other steps reckon with.
 *
 * @param zones its heated rooms
 * @param ways the ways between them
 * @param panes the panes on which vapour settles
 * @param outdoorAirM3S all outdoor air, time-averaged [m³/s]
 * @param leaksM3S air through leaks and ventilators while no unbalanced fan runs [m³/s]
 * @param hub where rooms without a door of their own open into, as an index of {@code zones}
 * @param celsius temperature at which vapour contents are counted [°C]
 */
public record ZonedHome(
    List<Zone> zones,
    List<Way> ways,
    List<PaneOfWindow> panes,
    double outdoorAirM3S,
    double leaksM3S,
    int hub,
    double celsius) {
  /** Copies the lists. */
  public ZonedHome {
    zones = List.copyOf(zones);
    ways = List.copyOf(ways);
    panes = List.copyOf(panes);
  }

  /**
   * A room.
   *
   * @param room the survey's id
   * @param supplyM3S outdoor air that fans bring into it [m³/s]
   * @param extractM3S air that fans take out of it [m³/s]
   * @param shareOfLeaksIn its part in what leaks in [1]
   * @param shareOfLeaksOut its part in what leaks out [1]
   * @param waterKgS water that goes into its air [kg/s]
   */
  public record Zone(
      String room,
      double supplyM3S,
      double extractM3S,
      double shareOfLeaksIn,
      double shareOfLeaksOut,
      double waterKgS) {}

  /**
   * A way between two rooms.
   *
   * @param one index of a zone
   * @param other index of another
   * @param weight how easily air passes it beside the others
   * @param bothWaysM3S what passes both ways while nothing does on balance [m³/s]
   */
  public record Way(int one, int other, double weight, double bothWaysM3S) {}

  /**
   * A pane.
   *
   * @param window the survey's id
   * @param zone index of its zone
   * @param transferM3S the flow of air whose drying would take as much [m³/s]
   */
  public record PaneOfWindow(String window, int zone, double transferM3S) {}
}
