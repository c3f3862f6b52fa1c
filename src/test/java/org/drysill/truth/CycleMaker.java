package org.drysill.truth;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Runs a made-up unit and logs it, with the faults of its thermometers. */
public final class CycleMaker {
  private static final double DT = 0.1;

  /** In still air the face and the room draw near each other with this time constant [s]. */
  private static final double STILL_S = 15;

  private static final double DRIFT_K_H = 0.4;
  private static final int SETTLED_HALVES = 16;

  private final CycleTruth truth;
  private final Random dice;
  private final double[] offsets;
  private final List<Row> rows = new ArrayList<>();
  private final Tally supplied = new Tally();
  private final Tally extracted = new Tally();

  private CycleMaker(CycleTruth truth) {
    this.truth = truth;
    this.dice = RoomTruth.dice(truth.seed(), 22);
    this.offsets = new double[4];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = RoomTruth.between(dice, -truth.accuracyK(), truth.accuracyK());
    }
  }

  /** Adds up what is kept and what there is to keep, over whole half-cycles. */
  private static final class Tally {
    private double kept;
    private double offered;
    private double keptNow;
    private double offeredNow;

    void add(double kept, double offered) {
      keptNow += kept;
      offeredNow += offered;
    }

    /** A half-cycle is over; one of which the beginning was missed does not count. */
    void close(boolean whole) {
      kept += whole ? keptNow : 0;
      offered += whole ? offeredNow : 0;
      keptNow = 0;
      offeredNow = 0;
    }

    double ratio() {
      return kept / offered;
    }
  }

  /**
   * A row of a log.
   *
   * @param seconds since its start
   * @param indoor as the thermometer shows it [°C]
   * @param outdoor the same outdoors [°C]
   * @param supply the same at the face in the room [°C]
   * @param exhaust the same at the face outdoors [°C]
   * @param flow share of the full flow [1]
   */
  public record Row(
      double seconds, double indoor, double outdoor, double supply, double exhaust, double flow) {
    private static final DateTimeFormatter TIME =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private String csv(LocalDateTime start) {
      return String.format(
          Locale.ROOT,
          "%s,%.1f,%.1f,%.1f,%.1f\n",
          TIME.format(start.plusSeconds(Math.round(seconds))),
          indoor,
          outdoor,
          supply,
          exhaust);
    }
  }

  /**
   * A log, and what is true of it.
   *
   * @param rows its rows
   * @param supplyRatio mean over the time in which air was supplied, once the store had settled
   * @param exhaustRatio mean over the time in which air was extracted
   */
  public record Made(List<Row> rows, double supplyRatio, double exhaustRatio) {
    /** Copies the list. */
    public Made {
      rows = List.copyOf(rows);
    }

    /** The log as a file, its flow left out. */
    public String csv(LocalDateTime start) {
      StringBuilder csv =
          new StringBuilder("Time,Indoor (C),Outdoor (C),Supply grille (C),Exhaust (C)\n");
      rows.forEach(row -> csv.append(row.csv(start)));
      return csv.toString();
    }
  }

  /** Runs and logs it. */
  public static Made make(CycleTruth truth) {
    return new CycleMaker(truth).run();
  }

  private Made run() {
    double settled = SETTLED_HALVES * truth.halfS();
    Regenerator store = new Regenerator(truth.ntu(), truth.storeS(), truth.indoor());
    double inner = truth.indoor();
    double outer = truth.outdoor();
    double innerShown = inner;
    double outerShown = outer;
    double nextRow = 0;
    boolean supplyingBefore = false;
    double phase0 = dice.nextDouble() * 2 * truth.halfS();
    for (double t = 0; t <= truth.minutes() * 60; t += DT) {
      double indoor = truth.indoor() + 0.3 * Math.sin(t / 900) + DRIFT_K_H * t / 7200;
      double outdoor = truth.outdoor() + DRIFT_K_H * t / 3600;
      double phase = (t + phase0) % (2 * truth.halfS());
      boolean still = phase % truth.halfS() > truth.halfS() - truth.pauseS();
      boolean supplying = phase < truth.halfS();
      if (still) {
        inner += ((indoor + store.faceInRoom()) / 2 - inner) * DT / STILL_S;
        outer += ((outdoor + store.faceOutdoors()) / 2 - outer) * DT / STILL_S;
      } else if (supplying) {
        inner = store.supply(outdoor, DT);
        outer = outdoor;
      } else {
        outer = store.extract(indoor, DT);
        inner = indoor;
      }
      if (!still && supplying) {
        supplied.add(inner - outdoor, indoor - outdoor);
      } else if (!still) {
        extracted.add(indoor - outer, indoor - outdoor);
      }
      if (supplying != supplyingBefore) {
        (supplying ? extracted : supplied).close(t > settled);
        supplyingBefore = supplying;
      }
      innerShown += (inner - innerShown) * DT / truth.lagS();
      outerShown += (outer - outerShown) * DT / truth.lagS();
      if (t >= nextRow) {
        rows.add(
            new Row(
                t,
                shown(indoor, 0),
                shown(outdoor, 1),
                shown(innerShown, 2),
                shown(outerShown, 3),
                still ? 0 : 1));
        nextRow += truth.stepS();
      }
    }
    return new Made(rows, supplied.ratio(), extracted.ratio());
  }

  /** With one decimal, as most loggers write it. */
  private double shown(double celsius, int sensor) {
    double read = celsius + offsets[sensor] + truth.noiseK() * dice.nextGaussian();
    return Math.round(10 * read) / 10.0;
  }
}
