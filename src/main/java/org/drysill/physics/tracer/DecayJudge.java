package org.drysill.physics.tracer;

import org.drysill.physics.tracer.Falls.Fall;
import org.drysill.physics.tracer.fit.ExponentialFit;
import org.drysill.physics.tracer.fit.FittedExponential;
import org.drysill.physics.tracer.fit.Prior;

/** Accepts or rejects a fall. */
final class DecayJudge {
  private final TracerSeries series;
  private final ReadingErrors errors;
  private final Substance substance;
  private final DecayRules rules;

  DecayJudge(TracerSeries series, ReadingErrors errors, Substance substance, DecayRules rules) {
    this.series = series;
    this.errors = errors;
    this.substance = substance;
    this.rules = rules;
  }

  Decay judge(Fall fall) {
    Stretch stretch = fall.stretch();
    if (substance.fallsToLevelBefore() && fall.before().isEmpty()) {
      return rejected(stretch, Rejection.LEVEL_BEFORE_UNKNOWN, 0, 0);
    }
    Prior level = substance.level(fall.before().orElse(0), errors.background());
    double height = stretch.startExcess() - level.value();
    double least = rules.floor() * errors.combined() * Math.exp(rules.leastAirChanges());
    if (height < least) {
      return rejected(stretch, Rejection.TOO_WEAK, height, least);
    }
    if (stretch.readings() < rules.leastReadings()) {
      return rejected(
          stretch, Rejection.TOO_FEW_READINGS, stretch.readings(), rules.leastReadings());
    }
    return judge(stretch, fitted(stretch.from(), stretch.to(), level));
  }

  private Decay judge(Stretch stretch, FittedExponential fit) {
    double airChanges = fit.ratePerHour() * stretch.hours();
    if (!(airChanges >= rules.leastAirChanges())) {
      return rejected(stretch, tooShort(stretch), airChanges, rules.leastAirChanges());
    }
    double moved = series.backgroundMoved(stretch.from(), stretch.to());
    double share = moved / (stretch.startExcess() - stretch.endExcess());
    if (!(share <= rules.outdoorShare())) {
      return rejected(stretch, Rejection.OUTDOOR_MOVED, share, rules.outdoorShare());
    }
    Halves halves = halves(stretch, fit);
    if (halves.differ(rules)) {
      return rejected(stretch, Rejection.NOT_EXPONENTIAL, halves.ratio(), rules.halvesFactor());
    }
    if (fit.scatter() > rules.scatterFactor() * errors.reading()
        && fit.rSquared() < rules.leastRSquared()) {
      return rejected(stretch, Rejection.NOT_SMOOTH, fit.rSquared(), rules.leastRSquared());
    }
    double error = fit.standardError() / fit.ratePerHour();
    return error <= rules.worstError()
        ? new Decay.Accepted(stretch, fit)
        : rejected(stretch, Rejection.TOO_UNCERTAIN, error, rules.worstError());
  }

  private static Rejection tooShort(Stretch stretch) {
    return switch (stretch.ending()) {
      case RISE -> Rejection.ROSE_AGAIN;
      case GAP -> Rejection.CUT_BY_GAP;
      case FLAT -> Rejection.TOO_FLAT;
      case FLOOR, END_OF_LOG -> Rejection.TOO_SHORT;
    };
  }

  /** Both halves by number of readings, with the level where the whole decay puts it. */
  private Halves halves(Stretch stretch, FittedExponential whole) {
    int middle = (stretch.from() + stretch.to()) / 2;
    Prior level = new Prior(whole.level(), 0);
    return new Halves(
        fitted(stretch.from(), middle, level), fitted(middle + 1, stretch.to(), level));
  }

  private FittedExponential fitted(int from, int to, Prior level) {
    double[][] part = series.part(from, to);
    return ExponentialFit.decay(part[0], part[1], part[2], level);
  }

  private static Decay rejected(Stretch stretch, Rejection reason, double found, double allowed) {
    return new Decay.Rejected(stretch, reason, found, allowed);
  }

  /** The same decay read twice; of an exponential both halves say the same. */
  private record Halves(FittedExponential first, FittedExponential second) {
    double ratio() {
      return first.ratePerHour() / second.ratePerHour();
    }

    boolean differ(DecayRules rules) {
      double apart = Math.abs(first.ratePerHour() - second.ratePerHour());
      double error = Math.hypot(first.standardError(), second.standardError());
      double ratio = ratio();
      boolean alike = ratio <= rules.halvesFactor() && ratio >= 1 / rules.halvesFactor();
      return !alike && !(apart <= rules.halvesErrors() * error);
    }
  }
}
