package org.drysill.assess.model;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.physics.zones.fit.Posterior;
import org.drysill.reference.Sourced;

/** Whether the readings tell water and air apart, and the reading that would. */
final class SplitFinding {
  private static final String LOGGERS =
      "Leave loggers of temperature and humidity in the rooms and outdoors for at least 1 week in"
          + " winter.";

  private final FittedHome home;
  private final List<FanInModel> fans;
  private final Basis airtightness;

  SplitFinding(FittedHome home, Basis airtightness) {
    this.home = home;
    this.fans = home.model().fans();
    this.airtightness = airtightness;
  }

  Finding of(Figure correlation, Figure water, Figure air, Sourced limit) {
    boolean together = correlation.likely() > limit.likely();
    return new Finding(
        "model.split",
        "Water and air told apart",
        Optional.empty(),
        together ? Verdict.UNKNOWN : Verdict.MEETS,
        Direction.NONE,
        Optional.of(water),
        Optional.of(air),
        together
            ? "The readings fix how much water there is for each litre of air, not either alone: a"
                + " home with more water and more air would have read the same."
            : "Water and air are each known about as surely as the one by the other. What doubt is left"
                + " is mostly that readings of a moment stand for days.",
        Optional.of(together ? next() : LOGGERS),
        List.of(limit.source()));
  }

  /** The reading that would take most of the doubt out of the air. */
  private String next() {
    double most = doubt(Unknowns.LEAKS);
    Optional<FanInModel> doubtful = Optional.empty();
    for (int f = 0; f < fans.size(); f++) {
      double doubt = doubt(home.model().unknowns().fan(f));
      if (doubt > most) {
        most = doubt;
        doubtful = Optional.of(fans.get(f));
      }
    }
    return doubtful.map(SplitFinding::measure).orElseGet(this::leaks);
  }

  private static String measure(FanInModel fan) {
    return "Measure the flow of " + fan.name() + " with a hood, and how many hours a day it runs.";
  }

  private String leaks() {
    return airtightness == Basis.MEASURED
        ? "Log carbon dioxide over two weeks: how it falls after people have left gives the air"
            + " change of the home."
        : "Measure the air leakage of the home with a fan in the front door (airtightness test).";
  }

  /** By how much the air moves while an unknown moves by its deviation, by factor. */
  private double doubt(int unknown) {
    Posterior now = home.posterior();
    double[] at = new double[home.model().unknowns().count()];
    for (int k = 0; k < at.length; k++) {
      at[k] = now.mean(k);
    }
    double before = home.model().outdoorAir(at);
    at[unknown] += Math.sqrt(now.covariance(unknown, unknown));
    return Math.abs(Math.log(home.model().outdoorAir(at) / before));
  }
}
