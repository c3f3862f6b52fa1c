package org.drysill.assess.ventilation.provided;

import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.AirChanges;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
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
import org.drysill.reference.ventilation.WindShelter;
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
  private final Optional<WeatherLeakage> weather;

  Leaks(Home home, VentilationDefaults defaults) {
    this.home = home;
    this.defaults = defaults;
    WindShelter shelter = Infiltration.wind(home.survey().dwelling().shelter());
    weather = WeatherLeakage.of(home, defaults, shelter);
    infiltration =
        new Infiltration(
            defaults,
            home.storeys(),
            shelter,
            weather.map(WeatherLeakage::coldShare).filter(s -> s > 0).map(s -> 1 / s));
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
                Stream.concat(
                        defaults.leakage().stream().map(LeakageMethod::source),
                        weather.stream().map(w -> defaults.stackAndWind().source()))
                    .toList(),
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

  /** By month; empty where the climate does not tell the wind. */
  Optional<LeaksByMonth> byMonth(Figure leaks) {
    return weather.map(
        w ->
            new LeaksByMonth(
                home.climate().months().stream().map(m -> month(w, m)).toList(),
                byWeather(
                    "cold_season",
                    "air through leaks by warmth and wind, mean of the cold season",
                    w.coldShare(),
                    w.season().outdoor(),
                    w.season().mean(m -> m.windMs().orElseThrow())),
                airChange(
                    "ventilation.leaks.by_divisor",
                    "air through leaks by the rule that divides",
                    leaks)));
  }

  private LeaksByMonth.Month month(WeatherLeakage model, OutdoorClimate.Month month) {
    String name = monthName(month.number());
    Figure airChange =
        byWeather(
            "month_" + month.number(),
            "air through leaks by warmth and wind in " + name,
            model.share(month),
            month.temperature(),
            month.windMs().orElseThrow());
    return new LeaksByMonth.Month(month.number(), airChange, flow(airChange));
  }

  private static String monthName(int number) {
    String name = Month.of(number).name();
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }

  private Figure byWeather(String id, String name, double share, double outdoor, double windMs) {
    return new Figure(
        "ventilation.leaks." + id,
        name,
        home.n50().value().times(share),
        Unit.AIR_CHANGE,
        FanFlows.weaker(home.n50().basis(), Basis.CALCULATED),
        () ->
            new Working(
                "n = n50 × r, with r = A_L × √(Cs × (Ti − Te) + Cw × U²) and A_L = (4 / 50)^0.65 ×"
                    + " √(ρ / 8) for 1 m³/s at 50 Pa",
                List.of(
                    Input.of("n50", home.n50()),
                    Input.of(
                        "r",
                        "share of the flow at 50 Pa",
                        Range.exactly(share),
                        Unit.RATIO,
                        Basis.CALCULATED),
                    Input.of("Ti", home.setpoint()),
                    Input.of(
                        "Te",
                        "mean outdoor temperature",
                        Range.exactly(outdoor),
                        Unit.CELSIUS,
                        home.climate().basis()),
                    Input.of(
                        "U",
                        "mean wind at the weather station in m/s",
                        Range.exactly(windMs),
                        Unit.RATIO,
                        home.climate().basis())),
                List.of(defaults.stackAndWind().source()),
                defaults.stackAndWind().note()));
  }

  private Figure flow(Figure airChange) {
    double unit = Airflow.ofAirChange(1, 1).m3PerSecond();
    return new Figure(
        airChange.id() + ".flow",
        airChange.name() + ", as a flow",
        airChange.value().times(home.volume().value()).times(unit),
        Unit.AIRFLOW,
        airChange.basis(),
        () ->
            new Working(
                "q = n × V",
                List.of(Input.of("n", airChange), Input.of("V", home.volume())),
                List.of(),
                Optional.empty()));
  }

  private Figure airChange(String id, String name, Figure flow) {
    return AirChanges.of(id, name, flow, home.volume());
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
                windows().size() == 1
                    ? "a background ventilator at the only window"
                    : "background ventilators at "
                        + unseen
                        + " of "
                        + windows().size()
                        + " windows",
                "none, and up to " + defaults.ventilators().notLookedAt().written() + " at each",
                "The survey does not say whether there are any.",
                "Look at the head of each window frame and note the equivalent area of its ventilator,"
                    + " or that there is none.",
                defaults.ventilators().source()));
  }
}
