package org.drysill.assess.ventilation.provided;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.survey.Fan;

/**
 * What one fan of the survey does for the home.
 *
 * @param fan what was seen
 * @param room the id of the room that it is in
 * @param name its name in sentences
 * @param counting how it counts
 * @param why why it counts so, in one sentence
 * @param running the flow at the fan while it runs [m³/s]; of an alternating unit the flow within
 *     one phase
 * @param boost the flow at its highest setting [m³/s], where one was measured
 * @param shareOfDay how long it runs, as a share of the day [1]
 * @param supply outdoor air that it brings in, time-averaged [m³/s]
 * @param extract indoor air that it takes out, time-averaged [m³/s]
 * @param derating what became of a declared flow, in one sentence
 * @param specificFanPower power by flow [W/(m³/s)], where both are known
 */
public record FanFlow(
    Fan fan,
    String room,
    String name,
    Counting counting,
    String why,
    Figure running,
    Optional<Figure> boost,
    Figure shareOfDay,
    Figure supply,
    Figure extract,
    Optional<String> derating,
    Optional<Figure> specificFanPower) {

  /** How a fan counts towards the air that the home gets. */
  public enum Counting {
    /** Takes air out; it comes in elsewhere. */
    EXTRACT,
    /** Blows air in; it goes out elsewhere. */
    SUPPLY,
    /** As much in as out. */
    EXCHANGE,
    /** Moves no air between inside and outside. */
    NOTHING
  }
}
