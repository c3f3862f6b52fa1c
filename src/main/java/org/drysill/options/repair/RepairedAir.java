package org.drysill.options.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.assess.ventilation.provided.AirBalance;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.options.effect.Figures;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.flow.CombinedFlow;

/**
 * The air of a home whose fans and ducts are mended.
 *
 * <pre>Q' = Q + C(S, E', I) − C(S, E, I),  C = min(S, E) + √((S − E)² + I²)</pre>
 *
 * <p>What fans that switch bring beyond their mean is in Q already; only the difference of means is
 * added, as for every measure.
 */
final class RepairedAir {
  private static final Figures FIGURES = new Figures("repaired");

  private final VentilationResult today;
  private final List<Studied> repairs;

  private RepairedAir(VentilationResult today, List<Studied> repairs) {
    this.today = today;
    this.repairs = repairs;
  }

  static VentilationResult of(Assessment today, List<Studied> repairs) {
    List<Studied> ofAir = repairs.stream().filter(r -> r.running().isPresent()).toList();
    return ofAir.isEmpty()
        ? today.ventilation()
        : new RepairedAir(today.ventilation(), ofAir).result();
  }

  private VentilationResult result() {
    ProvidedAir air = provided(today.provided());
    return new VentilationResult(
        today.rules(),
        today.required(),
        today.comparisons(),
        today.roomRules(),
        today.quoted(),
        air,
        today.rooms(),
        wholeHome(air.wholeHome()),
        today.extract().stream().map(this::extract).toList(),
        today.supply(),
        today.background(),
        today.purge(),
        today.airing(),
        today.transfer(),
        today.doorPressure(),
        today.fanPower(),
        today.assumptions());
  }

  private ProvidedAir provided(ProvidedAir air) {
    List<FanFlow> fans = air.fans().stream().map(this::fan).toList();
    Range taken = air.extract().value();
    for (int i = 0; i < fans.size(); i++) {
      taken = changed(taken, air.fans().get(i).extract().value(), fans.get(i).extract().value());
    }
    Figure extract =
        FIGURES.of(
            "extract",
            "taken out by fans with their defects mended, time-averaged",
            taken,
            Unit.AIRFLOW,
            "Σ flow · share of the day",
            inputs(fans),
            List.of());
    Figure whole = wholeHome(air, extract);
    double added = whole.likely() - air.wholeHome().likely();
    return new ProvidedAir(
        whole,
        air.byFans(),
        air.supply(),
        extract,
        air.leaks(),
        air.leaksByMonth(),
        air.ventilators(),
        air.infiltration(),
        air.ventilatorsAtTestPressure(),
        airChange(air, whole),
        fans,
        new AirBalance(
            air.balance().supply(),
            air.balance().infiltration() + added,
            extract.likely(),
            air.balance().in() + added - extract.likely()),
        air.assumptions());
  }

  private static List<Input> inputs(List<FanFlow> fans) {
    List<Input> inputs = new ArrayList<>();
    for (int i = 0; i < fans.size(); i++) {
      inputs.add(Input.of("E" + (i + 1), fans.get(i).extract()));
    }
    return inputs;
  }

  private static Range changed(Range all, Range old, Range now) {
    return ordered(
        all.low() - old.low() + now.low(),
        all.likely() - old.likely() + now.likely(),
        all.high() - old.high() + now.high());
  }

  private static Range ordered(double low, double likely, double high) {
    return new Range(
        Math.max(0, Math.min(low, likely)),
        Math.max(0, likely),
        Math.max(0, Math.max(high, likely)));
  }

  private static Figure wholeHome(ProvidedAir air, Figure extract) {
    Range s = air.supply().value();
    Range e = air.extract().value();
    Range then = extract.value();
    Range i = air.infiltration().value();
    Range q = air.wholeHome().value();
    return FIGURES.of(
        "whole_home",
        "outdoor air of the home with its fans mended",
        ordered(
            q.low() + added(s.low(), e.low(), then.low(), i.low()),
            q.likely() + added(s.likely(), e.likely(), then.likely(), i.likely()),
            q.high() + added(s.high(), e.high(), then.high(), i.high())),
        Unit.AIRFLOW,
        "Q' = Q + C(S, E', I) − C(S, E, I), C = min(S, E) + √((S − E)² + I²)",
        List.of(
            Input.of("Q", air.wholeHome()),
            Input.of("S", air.supply()),
            Input.of("E", air.extract()),
            Input.of("E'", extract),
            Input.of("I", air.infiltration())),
        List.of());
  }

  private static double added(double supply, double extract, double then, double leaks) {
    return CombinedFlow.totalM3S(supply, then, leaks)
        - CombinedFlow.totalM3S(supply, extract, leaks);
  }

  private static Figure airChange(ProvidedAir air, Figure whole) {
    double times =
        air.wholeHome().likely() > 0 ? air.airChange().likely() / air.wholeHome().likely() : 0;
    return FIGURES.of(
        "air_change",
        "outdoor air of the home with its fans mended, as air changes",
        whole.value().times(times),
        Unit.AIR_CHANGE,
        "n = Q' / V",
        List.of(Input.of("Q'", whole)),
        List.of());
  }

  private FanFlow fan(FanFlow fan) {
    return repairs.stream()
        .filter(r -> r.replaced().contains(fan))
        .findFirst()
        .map(r -> mended(fan, r))
        .orElse(fan);
  }

  private static FanFlow mended(FanFlow fan, Studied repair) {
    Studied.Running runs = repair.running().orElseThrow();
    Figures figures = new Figures("repaired.fan." + fan.fan().id());
    Figure running = repair.effect().runningFlow().orElseThrow();
    Figure share =
        figures.of(
            "share_of_day",
            "share of the day that it runs",
            runs.shareOfDay(),
            Unit.PERCENT,
            Basis.ASSUMED,
            "hours a day / 24",
            List.of(),
            List.of());
    Figure extract =
        figures.of(
            "extract",
            "taken out by the " + fan.name() + ", mended, time-averaged",
            runs.flow().times(runs.shareOfDay()),
            Unit.AIRFLOW,
            "flow · share of the day",
            List.of(Input.of("flow", running), Input.of("share", share)),
            List.of());
    return new FanFlow(
        RepairedFans.running(fan.fan()),
        fan.room(),
        fan.name(),
        FanFlow.Counting.EXTRACT,
        "It is reckoned as mended.",
        running,
        Optional.empty(),
        Optional.empty(),
        fan.stated(),
        Optional.empty(),
        share,
        fan.supply(),
        extract,
        Optional.empty(),
        Optional.empty());
  }

  private Finding wholeHome(Figure air) {
    Finding f = today.wholeHome();
    return new Finding(
        f.id(),
        f.subject(),
        f.room(),
        f.required()
            .map(r -> Verdict.atLeast(air.value(), r.value().high()))
            .orElse(Verdict.UNKNOWN),
        f.direction(),
        Optional.of(air),
        f.required(),
        "With its fans mended the home would get the air shown here.",
        f.settledBy(),
        f.sources());
  }

  /** A room that is not known to have enough is judged by its mended fan. */
  private Finding extract(Finding f) {
    return f.verdict() == Verdict.MEETS
        ? f
        : repairs.stream().flatMap(r -> with(r, f)).findFirst().orElse(f);
  }

  private static Stream<Finding> with(Studied repair, Finding today) {
    return repair.effect().extract().stream()
        .filter(f -> f.room().equals(today.room()))
        .map(
            f ->
                new Finding(
                    today.id(),
                    today.subject(),
                    today.room(),
                    f.verdict(),
                    f.direction(),
                    f.provided(),
                    f.required(),
                    f.because(),
                    today.settledBy(),
                    f.sources()));
  }
}
