package org.drysill.assess.ventilation.provided;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.drysill.assess.AirChanges;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.OutdoorAir.Source;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.ventilation.VentilationDefaults;

/** Adds up the outdoor air that a home gets. */
public final class Provision {
  private static final Citation QUADRATURE =
      new Citation(
          "ASHRAE Handbook Fundamentals",
          Optional.empty(),
          Optional.of("ventilation and infiltration, combination of flows"),
          How.MEMORY);

  private final FanFlows fans;
  private final Leaks leaks;
  private final Home home;

  private Provision(Home home, VentilationDefaults defaults, Map<String, LoggedTurns> turns) {
    this.home = home;
    fans = new FanFlows(home, defaults, turns);
    leaks = new Leaks(home, defaults);
  }

  /**
   * The outdoor air that a home gets.
   *
   * @param home the home
   * @param defaults what is taken for granted
   * @param turns what logs show of alternating units, by the survey's id of the fan
   */
  public static ProvidedAir of(
      Home home, VentilationDefaults defaults, Map<String, LoggedTurns> turns) {
    return new Provision(home, defaults, turns).provided();
  }

  private ProvidedAir provided() {
    Figure supply = sum("ventilation.supply", "outdoor air blown in by fans", FanFlow::supply);
    Figure extract = sum("ventilation.extract", "air taken out by fans", FanFlow::extract);
    Figure leaking = leaks.leaks();
    Figure ventilators = leaks.ventilators();
    Figure infiltration = infiltration(leaking, ventilators);
    Figure whole = wholeHome(supply, extract, infiltration);
    return new ProvidedAir(
        whole,
        byFans(supply, extract),
        supply,
        extract,
        leaking,
        leaks.byMonth(leaking),
        ventilators,
        infiltration,
        leaks.ventilatorsAtTestPressure(),
        airChange(whole),
        fans.all(),
        balance(supply, extract, whole),
        assumptions());
  }

  private List<Assumption> assumptions() {
    return Stream.concat(fans.assumptions().stream(), leaks.assumptions().stream()).toList();
  }

  private Figure sum(String id, String name, Function<FanFlow, Figure> part) {
    List<Figure> parts = fans.all().stream().map(part).filter(f -> f.value().high() > 0).toList();
    Range value = parts.stream().map(Figure::value).reduce(Range.exactly(0), Range::plus);
    return new Figure(
        id,
        name + ", averaged over time",
        value,
        Unit.AIRFLOW,
        weakest(parts),
        () ->
            new Working(
                "q = Σ q_mean",
                parts.stream().map(f -> Input.of("q_mean", f)).toList(),
                List.of(),
                Optional.empty()));
  }

  private static Basis weakest(List<Figure> parts) {
    return parts.stream().map(Figure::basis).max(Basis::compareTo).orElse(Basis.CALCULATED);
  }

  private static Figure infiltration(Figure leaking, Figure ventilators) {
    return new Figure(
        "ventilation.infiltration",
        "air through leaks and ventilators",
        leaking.value().plus(ventilators.value()),
        Unit.AIRFLOW,
        FanFlows.weaker(leaking.basis(), Basis.CALCULATED),
        () ->
            new Working(
                "q = q_leaks + q_ventilators",
                List.of(Input.of("q_leaks", leaking), Input.of("q_ventilators", ventilators)),
                List.of(),
                Optional.empty()));
  }

  private static Figure byFans(Figure supply, Figure extract) {
    Range s = supply.value();
    Range e = extract.value();
    return new Figure(
        "ventilation.by_fans",
        "outdoor air moved by fans, averaged over time",
        new Range(
            Math.max(s.low(), e.low()),
            Math.max(s.likely(), e.likely()),
            Math.max(s.high(), e.high())),
        Unit.AIRFLOW,
        FanFlows.weaker(supply.basis(), extract.basis()),
        () ->
            new Working(
                "q = max(q_supply; q_extract)",
                List.of(Input.of("q_supply", supply), Input.of("q_extract", extract)),
                List.of(),
                Optional.empty()));
  }

  private Figure wholeHome(Figure supply, Figure extract, Figure infiltration) {
    Range inf = infiltration.value();
    Range total =
        new Range(
            OutdoorAir.meanM3S(sources(Range::low), inf.low()),
            OutdoorAir.meanM3S(sources(Range::likely), inf.likely()),
            OutdoorAir.meanM3S(sources(Range::high), inf.high()));
    Basis basis =
        FanFlows.weaker(infiltration.basis(), FanFlows.weaker(supply.basis(), extract.basis()));
    return new Figure(
        "ventilation.whole_home.provided",
        "outdoor air of the whole home",
        total,
        Unit.AIRFLOW,
        basis,
        () ->
            new Working(
                "q = mean over fans on and off of (q_balanced + √(q_unbalanced² + q_infiltration²))",
                List.of(
                    Input.of("q_supply", supply),
                    Input.of("q_extract", extract),
                    Input.of("q_infiltration", infiltration)),
                List.of(QUADRATURE),
                Optional.of(
                    "Fans that do not run all the time are taken to switch independently; the mean"
                        + " is over their states.")));
  }

  private List<Source> sources(ToDoubleFunction<Range> end) {
    return fans.all().stream()
        .filter(fan -> fan.counting() != FanFlow.Counting.NOTHING)
        .map(fan -> source(fan, end))
        .toList();
  }

  private static Source source(FanFlow fan, ToDoubleFunction<Range> end) {
    return new Source(
        end.applyAsDouble(fan.supplyWhileRunning()),
        end.applyAsDouble(fan.extractWhileRunning()),
        end.applyAsDouble(fan.shareOfDay().value()));
  }

  private Figure airChange(Figure whole) {
    return AirChanges.of(
        "ventilation.whole_home.air_change", "air change of the whole home", whole, home.volume());
  }

  private static AirBalance balance(Figure supply, Figure extract, Figure whole) {
    double total = whole.likely();
    return new AirBalance(
        supply.likely(), total - supply.likely(), extract.likely(), total - extract.likely());
  }
}
