package org.drysill.assess.ventilation.provided;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.ducts.FanAtWork;
import org.drysill.physics.Range;
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
 * @param atWork where it works by its curve and duct, where its flow was calculated so
 * @param inMotion the part of its half cycle in which an alternating unit blows, where it was timed
 * @param stated true where the survey gives a flow, measured or declared, or its curve and duct
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
    Optional<FanAtWork> atWork,
    Optional<Figure> inMotion,
    boolean stated,
    Optional<Figure> boost,
    Figure shareOfDay,
    Figure supply,
    Figure extract,
    Optional<String> derating,
    Optional<Figure> specificFanPower) {

  /** How a fan counts towards the air that the home gets. */
  public enum Counting {
    /** Takes air out; it comes in elsewhere. */
    EXTRACT(0, 1),
    /** Blows air in; it goes out elsewhere. */
    SUPPLY(1, 0),
    /** As much in as out, at the same time. */
    EXCHANGE(1, 1),
    /** In for one half of each cycle and out for the other. */
    ALTERNATING(0.5, 0.5),
    /** Moves no air between inside and outside. */
    NOTHING(0, 0);

    private final double supplyShare;
    private final double extractShare;

    Counting(double supplyShare, double extractShare) {
      this.supplyShare = supplyShare;
      this.extractShare = extractShare;
    }

    /** Share of the running flow that comes in from outside, averaged over a cycle [1]. */
    public double supplyShare() {
      return supplyShare;
    }

    /** Share of the running flow that goes out, averaged over a cycle [1]. */
    public double extractShare() {
      return extractShare;
    }
  }

  /** What it takes out of its room while it runs, averaged over a cycle [m³/s]. */
  public Range extractWhileRunning() {
    return overCycle(running.value(), counting.extractShare());
  }

  /** What it brings in while it runs, averaged over a cycle [m³/s]. */
  public Range supplyWhileRunning() {
    return overCycle(running.value(), counting.supplyShare());
  }

  /** The same at its highest setting [m³/s], where one was measured. */
  public Optional<Range> extractAtBoost() {
    return boost.map(b -> overCycle(b.value(), counting.extractShare()));
  }

  private Range overCycle(Range flow, double share) {
    return flow.times(share).times(inMotion.map(Figure::value).orElse(Range.exactly(1)));
  }
}
