package org.drysill.assess.recovery.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.recovery.HeatRecoveryAssessor;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.recovery.RecoveryTest;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.recovery.TestForm;
import org.drysill.assess.recovery.TestQuality;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.Survey;
import org.drysill.survey.log.LogFixtures;
import org.drysill.survey.log.read.LogReader;
import org.drysill.truth.CycleMaker;
import org.drysill.truth.CycleTruth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A unit of ratio 0.55 as its logs tell it. */
class CycleAssessmentTest {
  private static final LocalDateTime START = LocalDateTime.of(2026, 1, 22, 10, 0);
  private static final CycleTruth UNIT =
      new CycleTruth(7, 2.62, 130, 70, 4, 4, 0.05, 0.0, 2, 75, 20, 3);

  @TempDir private Path folder;

  private HeatRecoveryResult assess(String csv, String keys) throws IOException {
    Files.writeString(folder.resolve("cycle.csv"), csv);
    Survey survey =
        HomeFixtures.survey(
            "england",
            "floor_area: 84 m2",
            "- {id: kitchen, use: kitchen, fans: [{id: u, kind: alternating heat recovery,"
                + " measured_flow: 11 l/s, heat_recovery_tests: [{instrument: th1, log: cycle.csv"
                + keys
                + "}]}]}");
    return HeatRecoveryAssessor.assess(
        HomeFixtures.of(survey),
        new LogReader(folder, LogFixtures.LIMITS).read(survey),
        Map.of(),
        RecoveryDefaults.bundled(),
        ReadingRules.bundled().accuracy());
  }

  private RecoveryUnit unit(String csv, String keys) throws IOException {
    return assess(csv, keys).unit("u").orElseThrow();
  }

  private RecoveryTest test(String csv) throws IOException {
    return unit(csv, "").tests().get(0);
  }

  private static String csv(CycleTruth truth) {
    return CycleMaker.make(truth).csv(START);
  }

  /** Without the columns of some indexes. */
  private static String without(String csv, List<Integer> columns) {
    return csv.lines()
        .map(
            line -> {
              String[] fields = line.split(",", -1);
              return java.util.stream.IntStream.range(0, fields.length)
                  .filter(i -> !columns.contains(i))
                  .mapToObj(i -> fields[i])
                  .collect(Collectors.joining(","));
            })
        .collect(Collectors.joining("\n", "", "\n"));
  }

  @Test
  void a_good_log_counts_fully_and_says_how_much_of_it_was_used() throws IOException {
    HeatRecoveryResult result = assess(csv(UNIT), "");
    RecoveryUnit unit = result.unit("u").orElseThrow();
    RecoveryTest test = unit.tests().get(0);
    CycleMaker.Made truth = CycleMaker.make(UNIT);
    assertThat(test.form()).isEqualTo(TestForm.LOG);
    assertThat(test.quality()).isEqualTo(TestQuality.NORMAL);
    assertThat(test.supplyRatio().orElseThrow().likely())
        .isCloseTo(truth.supplyRatio(), within(0.012));
    assertThat(test.exhaustRatio().orElseThrow().likely())
        .isCloseTo(truth.exhaustRatio(), within(0.012));
    assertThat(test.supplyRatio().orElseThrow().working().formula()).contains("Σ q·(Tsup - Te)");
    assertThat(test.exhaustRatio().orElseThrow().working().formula()).contains("Texh");
    assertThat(test.why())
        .contains("whole cycles of 140 s count; left out were")
        .contains("while its store settled")
        .endsWith("K warmer than outdoors; the laboratory takes 13 K.");
    CyclesSeen seen = test.cycles().orElseThrow();
    assertThat(seen.used()).isBetween(24, 30);
    assertThat(seen.settling()).isPositive();
    assertThat(seen.supplyTime().likely()).isCloseTo(70, within(0.5));
    assertThat(seen.lag().likely()).isCloseTo(4, within(0.6));
    assertThat(seen.pause()).isPresent();
    assertThat(seen.early().likely()).isGreaterThan(seen.late().likely() + 0.15);
    assertThat(seen.balance()).isEmpty();
    assertThat(seen.course()).hasSizeBetween(40, 80);
    assertThat(seen.lag().working().formula()).isNotBlank();
    assertThat(seen.room().working().formula()).isNotBlank();
    assertThat(seen.early().working().note()).isPresent();
    assertThat(result.assumptions()).anyMatch(a -> a.id().endsWith(".constant_flow"));
    assertThat(unit.measured().orElseThrow().value())
        .isEqualTo(test.supplyRatio().orElseThrow().value());
    assertThat(unit.notes()).anyMatch(n -> n.contains("with 20 % less one way, 4"));
    assertThat(unit.saved()).isPresent();
  }

  /** The accuracy of the thermometers does not average out: 0.4 K of 17 K and more. */
  @Test
  void the_interval_keeps_what_thermometers_are_off_by() throws IOException {
    double half =
        test(csv(UNIT)).supplyRatio().orElseThrow().value().high()
            - test(csv(UNIT)).supplyRatio().orElseThrow().likely();
    assertThat(half).isBetween(0.4 / 17 * 1.2, 0.4 / 17 * 1.8);
  }

  /**
   * The room and outdoors are read less often than the grille: a gap takes its neighbour's value.
   */
  @Test
  void gaps_in_the_other_columns_take_the_value_beside_them() throws IOException {
    String[] lines = csv(UNIT).split("\n");
    for (int i = 1; i < lines.length; i++) {
      String[] fields = lines[i].split(",", -1);
      boolean atTheEnds = i < 4 || i > lines.length - 4;
      fields[1] = atTheEnds || i % 3 == 0 ? "" : fields[1];
      fields[3] = i == 40 ? "" : fields[3];
      lines[i] = String.join(",", fields);
    }
    RecoveryTest test = test(String.join("\n", lines) + "\n");
    assertThat(test.quality()).isEqualTo(TestQuality.NORMAL);
    assertThat(test.supplyRatio().orElseThrow().likely())
        .isCloseTo(CycleMaker.make(UNIT).supplyRatio(), within(0.012));
  }

  @Test
  void a_short_log_is_indicative() throws IOException {
    RecoveryTest test = test(csv(UNIT.logged(2, 30)));
    assertThat(test.quality()).isEqualTo(TestQuality.INDICATIVE);
    assertThat(test.why()).startsWith("Indicative only: ").contains("and it takes 20");
    assertThat(test.supplyRatio()).isPresent();
  }

  @Test
  void a_coarse_log_is_indicative_and_a_coarser_one_useless() throws IOException {
    assertThat(test(csv(UNIT.logged(10, 90))).why())
        .contains("a half-cycle holds 7 readings, and it takes 10");
    RecoveryTest useless = test(csv(UNIT.logged(30, 90)));
    assertThat(useless.quality()).isEqualTo(TestQuality.REFUSED);
    assertThat(useless.why()).startsWith("Refused: from one reading to the next, 30 s,");
    assertThat(test(csv(UNIT.logged(20, 90))).why())
        .isEqualTo(
            "Refused: a reading every 20 s shows no half-cycle of 70 s; it takes one every 7 s or"
                + " so.");
    assertThat(useless.cycles()).isEmpty();
    assertThat(useless.difference()).isPresent();
  }

  /** A quarter of the half-cycle and more: the swing is flattened, and the interval opens. */
  @Test
  void a_slow_thermometer_is_named_and_widens_the_interval() throws IOException {
    RecoveryTest slow = test(csv(UNIT.withLag(28)));
    assertThat(slow.quality()).isEqualTo(TestQuality.INDICATIVE);
    assertThat(slow.why()).contains("flattens the swing and may hide a lower ratio");
    assertThat(slow.supplyRatio().orElseThrow().value().low())
        .isLessThan(CycleMaker.make(UNIT).supplyRatio());
    assertThat(slow.supplyRatio().orElseThrow().working().formula()).contains("(1·δ)²");
  }

  @Test
  void a_mild_day_is_indicative_and_a_warm_one_refused() throws IOException {
    assertThat(test(csv(UNIT.on(12))).why())
        .contains("K warmer than outdoors, and a test counts fully from 10 K up");
    RecoveryTest warm = test(csv(UNIT.on(16)));
    assertThat(warm.quality()).isEqualTo(TestQuality.REFUSED);
    assertThat(warm.why()).contains("below 5 K the test says nothing");
  }

  @Test
  void readings_beside_the_log_stand_in_for_its_columns() throws IOException {
    String grilleAlone = without(csv(UNIT), List.of(1, 2, 4));
    assertThat(test(grilleAlone).why())
        .isEqualTo(
            "Refused: its log has no temperature of the room, and none was noted beside it.");
    assertThat(unit(grilleAlone, ", indoor: 20.1 C").tests().get(0).why())
        .isEqualTo("Refused: its log has no temperature outdoors, and none was noted beside it.");
    RecoveryTest noted = unit(grilleAlone, ", indoor: 20.1 C, outdoor: 3.3 C").tests().get(0);
    assertThat(noted.supplyRatio().orElseThrow().likely())
        .isCloseTo(CycleMaker.make(UNIT).supplyRatio(), within(0.03));
    assertThat(noted.exhaustRatio()).isEmpty();
    assertThat(noted.warnings()).hasSize(2).allMatch(w -> w.startsWith("The log lacks"));
  }

  @Test
  void a_unit_that_stands_still_shows_no_cycle() throws IOException {
    StringBuilder still = new StringBuilder("Time,Indoor,Outdoor,Supply\n");
    for (int i = 0; i < 600; i++) {
      still.append(START.plusSeconds(2L * i)).append(",20,3,19.").append(i % 3).append('\n');
    }
    assertThat(test(still.toString()).why()).contains("does not swing");
  }

  @Test
  void grilles_that_were_swapped_are_refused() throws IOException {
    String warm =
        csv(UNIT)
            .lines()
            .map(
                line -> {
                  String[] f = line.split(",", -1);
                  return f[0].startsWith("2")
                      ? String.join(
                          ",", f[0], f[1], f[2], String.valueOf(45 - Double.parseDouble(f[3])))
                      : String.join(",", f[0], f[1], f[2], f[3]);
                })
            .collect(Collectors.joining("\n"));
    RecoveryTest test = test(warm);
    assertThat(test.quality()).isEqualTo(TestQuality.REFUSED);
    assertThat(test.why()).contains("Refused: ");
  }

  @Test
  void a_grille_outdoors_without_cycle_is_told() throws IOException {
    String broken =
        csv(UNIT)
            .lines()
            .map(line -> line.startsWith("2") ? line.replaceAll(",[^,]*$", ",3.0") : line)
            .collect(Collectors.joining("\n"));
    RecoveryTest test = test(broken);
    assertThat(test.supplyRatio()).isPresent();
    assertThat(test.exhaustRatio()).isEmpty();
    assertThat(test.warnings()).anyMatch(w -> w.startsWith("The grille outdoors was logged but"));
  }

  /** 60 s of supply and 80 s of extract with pauses of 4 s: 56/76 of the air comes back. */
  @Test
  void a_logged_flow_tells_how_unlike_in_and_out_are() throws IOException {
    StringBuilder csv = new StringBuilder("Time,Indoor,Outdoor,Supply,Flow\n");
    for (int i = 0; i < 2000; i++) {
      double phase = 2.0 * i % 140;
      boolean still = (phase >= 56 && phase < 60) || phase >= 136;
      double face = phase < 60 ? 15 - 0.08 * phase : 20;
      csv.append(START.plusSeconds(2L * i))
          .append(",20,0,")
          .append(face)
          .append(still ? ",0\n" : ",11\n");
    }
    RecoveryUnit unit = unit(csv.toString(), "");
    CyclesSeen seen = unit.tests().get(0).cycles().orElseThrow();
    assertThat(seen.balance().orElseThrow().likely()).isCloseTo(56.0 / 76, within(0.05));
    assertThat(unit.effective().orElseThrow().likely())
        .isCloseTo(
            unit.measured().orElseThrow().likely() * seen.balance().orElseThrow().likely(),
            within(1e-9));
    assertThat(unit.effective().orElseThrow().working().formula()).contains("min(b, 1/b)");
    assertThat(unit.notes()).anyMatch(n -> n.contains("the smaller one governs"));
  }

  @Test
  void halves_that_are_clearly_unlike_are_told_without_a_flow() throws IOException {
    StringBuilder csv = new StringBuilder("Time,Indoor,Outdoor,Supply\n");
    for (int i = 0; i < 2000; i++) {
      double phase = 2.0 * i % 140;
      csv.append(START.plusSeconds(2L * i))
          .append(",20,0,")
          .append(phase < 100 ? 17 - 0.08 * phase : 20)
          .append('\n');
    }
    RecoveryTest test = test(csv.toString());
    assertThat(test.warnings()).anyMatch(w -> w.startsWith("The halves of its cycle are unlike"));
    assertThat(test.cycles().orElseThrow().balance()).isPresent();
  }
}
