package org.drysill.assess.recovery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.recovery.cycle.CyclesSeen;
import org.drysill.physics.Range;
import org.drysill.reference.readings.Accuracy;
import org.drysill.reference.recovery.PipeMaterial;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.reference.recovery.SleevePipe;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.survey.log.Logs;

/** Assesses every unit with heat recovery of a home. */
public final class HeatRecoveryAssessor {
  private final Home home;
  private final Map<String, Figure> flows;
  private final RecoveryDefaults defaults;
  private final TestAssessment tests;
  private final SavedHeat heat;
  private final InstrumentErrors errors;

  private HeatRecoveryAssessor(
      Home home,
      Logs logs,
      Map<String, Figure> flows,
      RecoveryDefaults defaults,
      Accuracy accuracy) {
    this.errors = new InstrumentErrors(home.survey(), accuracy);
    this.home = home;
    this.flows = flows;
    this.defaults = defaults;
    this.tests = new TestAssessment(errors, defaults, logs);
    this.heat = new SavedHeat(errors, defaults);
  }

  /**
   * Heat recovery in use.
   *
   * @param home the home with every gap filled
   * @param logs the logs of the visit, of cycles among them
   * @param flows flow while it runs [m³/s], of an alternating unit within a phase, by the survey's
   *     id of the fan, from the assessment of ventilation; units that it lacks take their measured
   *     flow, else a share of their declared one
   * @param defaults what is taken for granted
   * @param accuracy what is assumed of instruments whose accuracy nobody states
   */
  public static HeatRecoveryResult assess(
      Home home,
      Logs logs,
      Map<String, Figure> flows,
      RecoveryDefaults defaults,
      Accuracy accuracy) {
    return new HeatRecoveryAssessor(home, logs, flows, defaults, accuracy).assess();
  }

  /**
   * How alternating units turn, as far as a log of their cycles shows it, by the survey's id of the
   * fan; of several logs the one with the most cycles.
   *
   * @param home the home
   * @param logs the logs of the visit, of cycles among them
   * @param defaults what is taken for granted
   * @param accuracy what is assumed of instruments whose accuracy nobody states
   */
  public static Map<String, CyclesSeen> turns(
      Home home, Logs logs, RecoveryDefaults defaults, Accuracy accuracy) {
    HeatRecoveryAssessor assessor =
        new HeatRecoveryAssessor(home, logs, Map.of(), defaults, accuracy);
    Map<String, CyclesSeen> turns = new LinkedHashMap<>();
    home.rooms().stream()
        .flatMap(room -> room.room().fans().stream())
        .filter(fan -> fan.kind() == FanKind.ALTERNATING_HEAT_RECOVERY)
        .forEach(fan -> assessor.seen(fan).ifPresent(seen -> turns.put(fan.id(), seen)));
    return turns;
  }

  private Optional<CyclesSeen> seen(Fan fan) {
    return IntStream.range(0, fan.heatRecoveryTests().size())
        .filter(i -> fan.heatRecoveryTests().get(i).log().isPresent())
        .mapToObj(i -> tests.of(testId(fan, i), fan.kind(), fan.heatRecoveryTests().get(i)))
        .flatMap(t -> t.cycles().stream())
        .max(Comparator.comparingInt(CyclesSeen::used));
  }

  private static String testId(Fan fan, int index) {
    return "recovery." + fan.id() + ".test" + (index + 1);
  }

  private HeatRecoveryResult assess() {
    List<RecoveryUnit> units = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      for (Fan fan : room.room().fans()) {
        if (recovers(fan)) {
          units.add(unit(room, fan));
        }
      }
    }
    return new HeatRecoveryResult(units, assumptions(units));
  }

  private static boolean recovers(Fan fan) {
    return switch (fan.kind()) {
      case ALTERNATING_HEAT_RECOVERY, SIMULTANEOUS_HEAT_RECOVERY, BALANCED_HEAT_RECOVERY -> true;
      case INTERMITTENT_EXTRACT,
          CONTINUOUS_EXTRACT,
          EXTRACT_HOOD,
          RECIRCULATING_HOOD,
          POSITIVE_INPUT,
          PASSIVE_STACK,
          FITTED_BUT_NOT_WORKING ->
          fan.declaredHeatRecovery().isPresent() || !fan.heatRecoveryTests().isEmpty();
    };
  }

  private RecoveryUnit unit(RoomFacts room, Fan fan) {
    String id = "recovery." + fan.id();
    String name = fan.name().orElse(fan.kind().word() + " unit");
    List<RecoveryTest> taken =
        IntStream.range(0, fan.heatRecoveryTests().size())
            .mapToObj(i -> tests.of(testId(fan, i), fan.kind(), fan.heatRecoveryTests().get(i)))
            .toList();
    Optional<Figure> declared = fan.declaredHeatRecovery().map(d -> UnitFigures.declared(id, d));
    Optional<Figure> measured = UnitFigures.measured(id, taken);
    Optional<Figure> effective =
        measured.flatMap(m -> effective(id, fan, m).or(() -> UnitFigures.effective(id, m, taken)));
    return new RecoveryUnit(
        fan.id(),
        room.id(),
        room.name(),
        name,
        fan.kind(),
        taken,
        declared,
        measured,
        effective,
        declared.map(
            d ->
                DeclaredFinding.of(
                    id, UnitWords.subject(room, name), room.id(), d, measured, defaults)),
        measured.flatMap(m -> saved(id, fan, m, taken)),
        fan.duct().flatMap(d -> new SleeveAssessment(defaults).of(id, d)),
        new UnitWords(defaults).notes(fan, measured, effective),
        UnitWords.verdict(declared, measured));
  }

  private Optional<Figure> effective(String id, Fan fan, Figure ratio) {
    Optional<Figure> own = heat.measuredFlow(id, fan);
    Optional<Figure> other =
        fan.pairedWith()
            .flatMap(this::fan)
            .flatMap(f -> heat.measuredFlow("recovery." + f.id(), f));
    return own.filter(q -> q.value().low() > 0)
        .flatMap(
            q ->
                other
                    .filter(o -> o.value().low() > 0)
                    .map(o -> UnitFigures.effective(id, ratio, q, o)));
  }

  private Optional<Fan> fan(String id) {
    return home.rooms().stream()
        .flatMap(r -> r.room().fans().stream())
        .filter(f -> f.id().equals(id))
        .findFirst();
  }

  private Optional<HeatSaved> saved(String id, Fan fan, Figure ratio, List<RecoveryTest> taken) {
    if (fan.kind() == FanKind.FITTED_BUT_NOT_WORKING) {
      return Optional.empty();
    }
    List<Range> differences =
        UnitFigures.counted(taken).stream()
            .flatMap(t -> t.difference().stream())
            .map(Figure::value)
            .toList();
    Range mean =
        differences.stream()
            .reduce(Range::plus)
            .map(sum -> sum.times(1.0 / differences.size()))
            .orElseThrow();
    return Optional.ofNullable(flows.get(fan.id()))
        .or(() -> heat.flow(id, fan))
        .map(q -> heat.of(id, fan, q, ratio, mean));
  }

  private List<Assumption> assumptions(List<RecoveryUnit> units) {
    List<String> sleeves =
        units.stream().filter(u -> u.sleeve().isPresent()).map(RecoveryUnit::name).toList();
    List<Assumption> all = new ArrayList<>(errors.assumptions());
    all.addAll(tests.assumptions());
    if (!sleeves.isEmpty()) {
      all.add(
          new Assumption(
              "recovery.sleeve",
              "Metal and wall thickness of fan sleeves",
              "steel to aluminium, %s to %s mm, for %s"
                  .formatted(
                      Numbers.number(thickness().low() * 1000),
                      Numbers.number(thickness().high() * 1000),
                      String.join(", ", sleeves)),
              "the survey says metal only",
              "Note which metal it is and how thick.",
              metal().thickness().source()));
    }
    return all;
  }

  private Range thickness() {
    return metal().thickness().range();
  }

  private SleevePipe metal() {
    return defaults.sleeve(PipeMaterial.METAL);
  }
}
