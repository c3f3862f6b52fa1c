package org.drysill.physics.recovery.cycle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.drysill.physics.TemperatureRatio;

/**
 * Finds the cycles of an alternating unit in a log of the air at one face, and the temperature
 * ratio of its judged half-cycles (EN 13141-8, memory; the evaluation is derived).
 *
 * <pre>η = Σ q·(T − Tfar) Δt / Σ q·(Tnear − Tfar) Δt     over whole half-cycles</pre>
 *
 * <p>The store cools as it gives heat, so a reading at the start of supply overstates and only
 * whole half-cycles count. The lag of the thermometer is read from its answer to the turn and taken
 * out; near the length of a half-cycle it flattens the swing so much that this no longer holds,
 * which is for the caller to say.
 */
public final class CycleSearch {
  private static final int LEAST_READINGS = 20;

  /** One or two lost readings are bridged, an outage is not. */
  private static final double BRIDGED_STEPS = 3;

  private final FaceLog log;
  private final CycleRules rules;
  private final Windows windows;
  private final double stepS;

  private CycleSearch(FaceLog log, CycleRules rules) {
    this.log = log;
    this.rules = rules;
    this.windows = new Windows(log);
    this.stepS = log.medianStepS();
  }

  /** What a log tells. */
  public static CycleOutcome of(FaceLog log, CycleRules rules) {
    return log.size() < LEAST_READINGS
        ? new CycleOutcome.None(NoCycle.TOO_SHORT, log.medianStepS(), Double.NaN, 0)
        : new CycleSearch(log, rules).search();
  }

  private CycleOutcome search() {
    double difference = difference();
    if (Math.abs(difference) < TemperatureRatio.SMALLEST_DIFFERENCE_K) {
      return none(NoCycle.NO_DIFFERENCE, Double.NaN, 0);
    }
    Swing swing = Swing.of(log);
    double leastTurn = Math.max(rules.leastSwingK(), rules.swingOverNoise() * swing.scatter());
    if (swing.kelvin() < leastTurn) {
      boolean still = swing.kelvin() < rules.swingOverNoise() * rules.leastSwingK();
      return none(still ? NoCycle.NO_SWING : NoCycle.SCATTER, Double.NaN, 0);
    }
    TurnFinder turns = new TurnFinder(log, (int) Math.signum(difference), swing, leastTurn);
    List<Cycle> cycles = turns.cycles(BRIDGED_STEPS * stepS);
    if (cycles.isEmpty()) {
      return none(NoCycle.TOO_FEW, Double.NaN, 0);
    }
    double cycleS = Medians.of(cycles.stream().mapToDouble(Cycle::length).toArray());
    List<Cycle> steady =
        cycles.stream()
            .filter(c -> Math.abs(c.length() - cycleS) <= rules.uneven() * cycleS)
            .toList();
    return objection(cycleS, cycles.size(), steady.size())
        .<CycleOutcome>map(why -> none(why, cycleS / 2, steady.size()))
        .orElseGet(() -> ratio(cycleS, steady, cycles.size() - steady.size() + turns.gaps()));
  }

  private Optional<NoCycle> objection(double cycleS, int seen, int steady) {
    if (cycleS / 2 < rules.leastSamples() * stepS) {
      return Optional.of(NoCycle.TOO_COARSE);
    }
    if (cycleS / 2 > rules.longestHalfS()) {
      return Optional.of(NoCycle.TOO_SLOW);
    }
    if (cycleS / 2 < rules.shortestHalfS()) {
      return Optional.of(NoCycle.TOO_FAST);
    }
    if (2 * steady < seen) {
      return Optional.of(NoCycle.IRREGULAR);
    }
    return steady < rules.fewestCycles() ? Optional.of(NoCycle.TOO_FEW) : Optional.empty();
  }

  private CycleOutcome ratio(double cycleS, List<Cycle> steady, int odd) {
    Curve curve = Curve.of(log, windows, steady, cycleS, stepS);
    TurnPlaces places = new TurnPlaceFinder(curve, cycleS, rules).find();
    List<Window> judged = new ArrayList<>();
    double air = 0;
    double otherAir = 0;
    for (Cycle cycle : steady) {
      Optional<Window> half = half(cycle, places);
      half.ifPresent(judged::add);
      if (half.isPresent()) {
        air += half.get().air();
        otherAir += other(cycle, places);
      }
    }
    if (judged.size() < rules.fewestCycles()) {
      return none(NoCycle.TOO_FEW, cycleS / 2, judged.size());
    }
    Spell spell = Spell.of(judged);
    List<Window> used = judged.subList(spell.settling(), judged.size());
    double uncorrected = mean(used, Window::uncorrectedRatio);
    CycleTiming timing = places.timing(cycleS);
    return new CycleRatio(
        spell.mean(),
        spell.error(),
        spell.mean() - uncorrected,
        edgeError(timing, curve, uncorrected),
        mean(used, Window::near),
        mean(used, Window::far),
        mean(used, Window::face),
        timing,
        stepS,
        used.size(),
        spell.settling(),
        odd + steady.size() - judged.size(),
        air / otherAir,
        folded(curve, places, cycleS));
  }

  private Optional<Window> half(Cycle cycle, TurnPlaces places) {
    return windows.between(
        cycle.from() + places.judgedFrom(),
        cycle.to() + places.otherFrom() - places.pauseS(),
        places.lagS());
  }

  private double other(Cycle cycle, TurnPlaces places) {
    return windows
        .between(
            cycle.from() + places.otherFrom(),
            cycle.from() + places.judgedFrom() - places.pauseS(),
            0)
        .map(Window::air)
        .orElse(0.0);
  }

  /** Half a step at either end, times how far the curve there is from the mean. */
  private double edgeError(CycleTiming timing, Curve curve, double mean) {
    return stepS
        / 2
        / timing.blowingS()
        * Math.hypot(curve.highest() - mean, mean - curve.lowest());
  }

  private static double mean(List<Window> used, ToDoubleFunction<Window> quantity) {
    double air = used.stream().mapToDouble(Window::air).sum();
    return used.stream().mapToDouble(w -> w.air() * quantity.applyAsDouble(w)).sum() / air;
  }

  private static List<FoldedPoint> folded(Curve curve, TurnPlaces places, double cycleS) {
    List<FoldedPoint> points = new ArrayList<>();
    for (int i = 0; i < curve.size(); i++) {
      double offset = curve.offset(i) - places.judgedFrom();
      points.add(new FoldedPoint(offset < 0 ? offset + cycleS : offset, curve.ratio(i)));
    }
    points.sort(Comparator.comparingDouble(FoldedPoint::offsetS));
    return points;
  }

  /** Mean difference of the air before both faces [K]. */
  private double difference() {
    double sum = 0;
    for (int i = 0; i < log.size(); i++) {
      sum += log.near(i) - log.far(i);
    }
    return sum / log.size();
  }

  private CycleOutcome none(NoCycle why, double halfCycleS, int cycles) {
    return new CycleOutcome.None(why, stepS, halfCycleS, cycles);
  }
}
