package org.drysill.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drysill.assess.Figure;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.recovery.HeatRecoveryAssessor;
import org.drysill.assess.recovery.RecoveryTest;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.Survey;
import org.drysill.survey.log.LogFixtures;
import org.drysill.survey.log.read.LogReader;
import org.drysill.truth.CycleMaker;
import org.drysill.truth.CycleTruth;

/**
 * Logs of alternating units whose ratio is known, written as files and read back from the survey
 * on: how often the stated interval holds the truth, how wide it is, how far off its middle.
 *
 * <pre>java -cp target/test-classes:target/drysill.jar org.drysill.benchmark.CycleExperiment 400
 * </pre>
 */
public final class CycleExperiment {
  private static final LocalDateTime START = LocalDateTime.of(2026, 1, 22, 10, 0);

  private CycleExperiment() {}

  /**
   * What came out.
   *
   * @param answered logs that gave a ratio on the supply side
   * @param supplyHeld share of answers on the supply side that hold the truth
   * @param exhaustHeld share of answers on the exhaust side that hold the truth
   * @param medianHalfWidth half of the median interval on the supply side [1]
   * @param medianBias median of middle less truth on the supply side [1]
   */
  public record Outcome(
      int answered,
      double supplyHeld,
      double exhaustHeld,
      double medianHalfWidth,
      double medianBias) {}

  /** Prints the outcome for a number of units. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createTempDirectory("cycles");
    System.out.println(run(Integer.parseInt(arguments[0]), folder));
    Files.delete(folder.resolve("cycle.csv"));
    Files.delete(folder);
  }

  /** Makes, writes, reads and assesses logs, one after the other in a folder. */
  public static Outcome run(int units, Path folder) throws IOException {
    List<Range> supply = new ArrayList<>();
    List<Double> off = new ArrayList<>();
    int supplyHeld = 0;
    int exhaustHeld = 0;
    int exhaust = 0;
    for (int seed = 0; seed < units; seed++) {
      CycleTruth truth = CycleTruth.of(seed);
      CycleMaker.Made made = CycleMaker.make(truth);
      RecoveryTest test = test(truth, made.csv(START), folder);
      if (test.supplyRatio().isPresent()) {
        Range found = test.supplyRatio().get().value();
        supply.add(found);
        off.add(found.likely() - made.supplyRatio());
        supplyHeld += holds(found, made.supplyRatio());
      }
      for (Figure found : test.exhaustRatio().stream().toList()) {
        exhaust++;
        exhaustHeld += holds(found.value(), made.exhaustRatio());
      }
    }
    return new Outcome(
        supply.size(),
        supplyHeld / (double) supply.size(),
        exhaustHeld / (double) exhaust,
        median(supply.stream().mapToDouble(r -> (r.high() - r.low()) / 2).toArray()),
        median(off.stream().mapToDouble(d -> d).toArray()));
  }

  /** What the assessment makes of a log. */
  public static RecoveryTest test(CycleTruth truth, String csv, Path folder) throws IOException {
    Files.writeString(folder.resolve("cycle.csv"), csv);
    Survey survey =
        HomeFixtures.read(
            String.format(
                Locale.ROOT,
                "drysill: 1%n"
                    + "visit: {date: 2026-01-22, instruments: [{id: th, kind: thermometer,"
                    + " temperature_accuracy: %.4f K}]}%n"
                    + "dwelling: {jurisdiction: england, floor_area: 84 m2}%n"
                    + "rooms: [{id: kitchen, use: kitchen, fans: [{id: u, kind: alternating heat"
                    + " recovery, heat_recovery_tests: [{log: cycle.csv, instrument: th}]}]}]%n",
                truth.accuracyK()));
    return HeatRecoveryAssessor.assess(
            HomeFixtures.of(survey),
            new LogReader(folder, LogFixtures.LIMITS).read(survey),
            Map.of(),
            RecoveryDefaults.bundled(),
            ReadingRules.bundled().accuracy())
        .unit("u")
        .orElseThrow()
        .tests()
        .get(0);
  }

  private static int holds(Range range, double truth) {
    return truth >= range.low() && truth <= range.high() ? 1 : 0;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    java.util.Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
