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

  /** Coefficients of the weather are shown in ten-thousandths. */
  private static final double TEN_THOUSAND = 1e4;

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
                coldSeason(w),
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
            "n = n50 × r, with r = A_L / 10 × √(Cs × |Ti − Te| + Cw × U²) and A_L = (4 / 50)^0.65 ×"
                + " √(ρ / 8) m² for 1 m³/s at 50 Pa",
            weatherInputs(model, month));
    return new LeaksByMonth.Month(month.number(), airChange, flow(airChange));
  }

  private static String monthName(int number) {
    String name = Month.of(number).name();
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }

  private Figure coldSeason(WeatherLeakage model) {
    return byWeather(
        "cold_season",
        "air through leaks by warmth and wind, mean of the cold season",
        model.coldShare(),
        "n = n50 × r, r the mean over the days of the months of the cold season",
        List.of());
  }

  private Figure byWeather(
      String id, String name, double share, String formula, List<Input> weatherInputs) {
    return new Figure(
        "ventilation.leaks." + id,
        name,
        home.n50().value().times(share),
        Unit.AIR_CHANGE,
        FanFlows.weaker(home.n50().basis(), Basis.CALCULATED),
        () ->
            new Working(
                formula,
                Stream.concat(
                        Stream.of(
                            Input.of("n50", home.n50()),
                            number("r", "share of the flow at 50 Pa", share, Basis.CALCULATED)),
                        weatherInputs.stream())
                    .toList(),
                List.of(defaults.stackAndWind().source()),
                defaults.stackAndWind().note()));
  }

  private List<Input> weatherInputs(WeatherLeakage model, OutdoorClimate.Month month) {
    Basis climate = home.climate().basis();
    return List.of(
        Input.of("Ti", home.setpoint()),
        Input.of(
            "Te",
            "mean outdoor temperature",
            Range.exactly(month.temperature()),
            Unit.CELSIUS,
            climate),
        number(
            "U", "mean wind at the weather station in m/s", month.windMs().orElseThrow(), climate),
        number(
            "Cs",
            "stack coefficient in 10⁻⁴ (l/s)²/(cm⁴·K)",
            model.model().stack() * TEN_THOUSAND,
            Basis.PUBLISHED),
        number(
            "Cw",
            "wind coefficient in 10⁻⁴ (l/s)²/(cm⁴·(m/s)²)",
            model.model().wind() * TEN_THOUSAND,
            Basis.PUBLISHED),
        number(
            "ρ", "density of air in kg/m³", defaults.stackAndWind().airDensity(), Basis.PUBLISHED));
  }

  private Input discharge() {
    return number(
        "Cd", "discharge coefficient", defaults.ventilators().discharge(), Basis.PUBLISHED);
  }

  private Input density() {
    return number(
        "ρ", "density of air in kg/m³", defaults.ventilators().airDensity(), Basis.PUBLISHED);
  }

  private static Input number(String symbol, String name, double value, Basis basis) {
    return Input.of(symbol, name, Range.exactly(value), Unit.RATIO, basis);
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

  /**
   * Through background ventilators at the pressure of the weather at which the leaks pass what they
   * are believed to: half of each lets air in and half lets it out, so that
   *
   * <pre>½ · Q50 · (w / 50)^n = Q50 / N,   q = ½ · Cd · A · √(2 w / ρ)</pre>
   *
   * <p>An opening keeps more of its flow than a crack where the pressure falls, the one by its
   * root, the other by its power n. The least is nothing: they may be shut.
   */
  Figure ventilators() {
    Range area = area();
    Range weather =
        new Range(weatherPa(divisor.high()), weatherPa(divisor.likely()), weatherPa(divisor.low()));
    Range flow =
        new Range(0, at(weather.likely(), area.likely()) / 2, at(weather.high(), area.high()) / 2);
    return new Figure(
        "ventilation.ventilators",
        "air through background ventilators",
        flow,
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            new Working(
                "q = Cd × A / 2 × √(2 w / ρ), w = 50 Pa × (2 / N)^(1 / n)",
                List.of(
                    Input.of(
                        "A",
                        "equivalent area of all ventilators",
                        area,
                        Unit.VENT_AREA,
                        Basis.DECLARED),
                    divisorInput(),
                    Input.of(
                        "n",
                        "exponent of leaks",
                        Range.exactly(exponent()),
                        Unit.RATIO,
                        Basis.PUBLISHED),
                    Input.of(
                        "w", "pressure of the weather", weather, Unit.PASCAL, Basis.CALCULATED),
                    discharge(),
                    density()),
                List.of(
                    defaults.ventilators().source(), defaults.roomAir().leakageExponent().source()),
                defaults.ventilators().note()));
  }

  private double weatherPa(double divisor) {
    return TEST_PA * Math.pow(2 / divisor, 1 / exponent());
  }

  private double exponent() {
    return defaults.roomAir().leakageExponent().value();
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
                        Basis.DECLARED),
                    Input.of(
                        "Δp",
                        "pressure that defines the area",
                        Range.exactly(pressure),
                        Unit.PASCAL,
                        Basis.PUBLISHED),
                    discharge(),
                    density()),
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

  private String windows(long unseen) {
    int all = windows().size();
    if (unseen < all) {
      return unseen + " of " + all + " windows";
    }
    return "all " + all + " windows";
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
                    : "background ventilators at " + windows(unseen),
                "none, and up to " + defaults.ventilators().notLookedAt().written() + " at each",
                "The survey does not say whether there are any.",
                "Look at the head of each window frame and note the equivalent area of its ventilator,"
                    + " or that there is none.",
                defaults.ventilators().source()));
  }
}
