package org.drysill.assess.ventilation.provided;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.physics.flow.Orifice;
import org.drysill.reference.ventilation.LeakageMethod;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.reference.ventilation.Ventilators;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/** Air through leaks and through open background ventilators while no unbalanced fan runs. */
final class Leaks {
  /** The pressure difference at which air leakage is stated; EN ISO 9972:2015 [Pa]. */
  private static final double TEST_PA = 50;

  private final Home home;
  private final VentilationDefaults defaults;
  private final Range divisor;
  private final LeakageMethod likely;
  private final Infiltration infiltration;

  Leaks(Home home, VentilationDefaults defaults) {
    this.home = home;
    this.defaults = defaults;
    infiltration = new Infiltration(defaults, home.storeys(), home.survey().dwelling().shelter());
    divisor = infiltration.divisor();
    likely = infiltration.likelyMethod();
  }

  /** Through leaks [m³/s]. */
  Figure leaks() {
    Range airChange = infiltration.airChangePerHour(home.n50().value());
    double unit = Airflow.ofAirChange(1, 1).m3PerSecond();
    return new Figure(
        "ventilation.leaks",
        "air through leaks",
        airChange.times(home.volume().value()).times(unit),
        Unit.AIRFLOW,
        FanFlows.weaker(home.n50().basis(), Basis.CALCULATED),
        () ->
            new Working(
                "q = n50 × V / N",
                List.of(Input.of("n50", home.n50()), Input.of("V", home.volume()), divisorInput()),
                defaults.leakage().stream().map(LeakageMethod::source).toList(),
                Optional.of(
                    "The likely value is by "
                        + likely.name()
                        + "; the range spans every method, which differ by a factor of about two."
                        + likely.note().map(note -> " " + note).orElse(""))));
  }

  private Input divisorInput() {
    return Input.of(
        "N", "divisor by height and shelter, over all methods", divisor, Unit.RATIO, Basis.ASSUMED);
  }

  /** Through background ventilators, counted like leaks; the least is nothing: they may be shut. */
  Figure ventilators() {
    Range area = area();
    Range flow =
        new Range(
            0,
            at(TEST_PA, area.likely()) / divisor.likely(),
            at(TEST_PA, area.high()) / divisor.low());
    return new Figure(
        "ventilation.ventilators",
        "air through background ventilators",
        flow,
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            new Working(
                "q = Cd × A × √(2 × 50 Pa / ρ) / N",
                List.of(
                    Input.of(
                        "A",
                        "equivalent area of all ventilators",
                        area,
                        Unit.VENT_AREA,
                        Basis.DECLARED),
                    divisorInput()),
                List.of(defaults.ventilators().source()),
                defaults.ventilators().note()));
  }

  /** Through background ventilators at the pressure of the definition of their area [m³/s]. */
  Figure ventilatorsAtTestPressure() {
    Range area = area();
    double pressure = defaults.ventilators().testPressure().value();
    return new Figure(
        "ventilation.ventilators_at_test_pressure",
        "air through background ventilators at " + defaults.ventilators().testPressure().written(),
        new Range(at(pressure, area.low()), at(pressure, area.likely()), at(pressure, area.high())),
        Unit.AIRFLOW,
        Basis.CALCULATED,
        () ->
            new Working(
                "q = Cd × A × √(2 × Δp / ρ)",
                List.of(
                    Input.of(
                        "A",
                        "equivalent area of all ventilators",
                        area,
                        Unit.VENT_AREA,
                        Basis.DECLARED)),
                List.of(defaults.ventilators().source()),
                Optional.empty()));
  }

  private double at(double pressurePa, double areaM2) {
    Ventilators how = defaults.ventilators();
    return new Orifice(how.discharge(), areaM2).flowM3S(pressurePa, how.airDensity());
  }

  private Range area() {
    return windows().stream().map(this::area).reduce(Range.exactly(0), Range::plus);
  }

  /** Nobody looked: likely none, at most what the defaults say. */
  private Range area(Window window) {
    Quantity unseen = defaults.ventilators().notLookedAt();
    return window
        .backgroundVentilator()
        .map(Quantity::range)
        .orElse(new Range(unseen.low(), unseen.low(), unseen.high()));
  }

  private List<Window> windows() {
    return home.rooms().stream()
        .filter(RoomFacts::heated)
        .flatMap(room -> room.room().windows().stream())
        .toList();
  }

  List<Assumption> assumptions() {
    long unseen = windows().stream().filter(w -> w.backgroundVentilator().isEmpty()).count();
    return unseen == 0
        ? List.of()
        : List.of(
            new Assumption(
                "ventilation.ventilators",
                "background ventilators at " + unseen + " of " + windows().size() + " windows",
                "none, and up to " + defaults.ventilators().notLookedAt().written() + " at each",
                "The survey does not say whether there are any.",
                "Look at the head of each window frame and note the equivalent area of its ventilator,"
                    + " or that there is none.",
                defaults.ventilators().source()));
  }
}
