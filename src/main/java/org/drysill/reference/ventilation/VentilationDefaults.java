package org.drysill.reference.ventilation;

import java.util.List;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What is taken for granted about fans and leaks where the survey does not say; and figures that
 * people quote.
 *
 * @param flowAccuracy accuracy of a flow reading whose instrument states none
 * @param wallLength duct length up to which a fan blows through the wall
 * @param shortLength duct length up to which a duct is short
 * @param deratings what is left of a declared flow
 * @param runHours how long fans run
 * @param unstatedFlows flows of fans of which the survey says none
 * @param leakage ways from air changes at 50 Pa to infiltration
 * @param stackAndWind coefficients of the leakage model by stack and wind
 * @param ventilators how background ventilators are counted
 * @param ducts what ducts lose
 * @param turning how alternating units turn where nobody has timed them
 * @param coldSeason outdoor temperature below which a month counts to the cold season
 * @param airing weathers at which airing through windows is told
 * @param doorPressure how the pressure across closed doors is reckoned
 * @param doorWidth width of a door whose width the survey does not say
 * @param roomAir the way of air from room to room
 * @param quoted air-change figures that people are told
 */
public record VentilationDefaults(
    @Key(about = "Accuracy of a flow reading whose instrument states none")
        SourcedShare flowAccuracy,
    @Key(
            about = "Duct length up to which a fan blows through the wall",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "600 mm")
        Quantity wallLength,
    @Key(
            about = "Duct length up to which a duct is short",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "1500 mm")
        Quantity shortLength,
    @Key(about = "What is left of a declared flow", required = true) List<Derating> deratings,
    @Key(about = "How long fans run", required = true) List<RunHours> runHours,
    @Key(about = "Flows of fans of which the survey says none", required = true)
        List<UnstatedFlow> unstatedFlows,
    @Key(about = "Ways from air changes at 50 Pa to infiltration", required = true)
        List<LeakageMethod> leakage,
    @Key(about = "Coefficients of the leakage model by stack and wind") StackAndWind stackAndWind,
    @Key(about = "How background ventilators are counted") Ventilators ventilators,
    @Key(about = "What ducts lose") DuctTables ducts,
    @Key(about = "How alternating units turn where nobody has timed them") Turning turning,
    @Key(about = "Outdoor temperature below which a month counts to the cold season")
        SourcedTemperature coldSeason,
    @Key(about = "Weathers at which airing through windows is told", required = true)
        List<AiringWeather> airing,
    @Key(about = "How the pressure across closed doors is reckoned") DoorPressureLimit doorPressure,
    @Key(about = "Width of a door whose width the survey does not say") SourcedLength doorWidth,
    @Key(about = "The way of air from room to room") RoomAirDefaults roomAir,
    @Key(about = "Air-change figures that people are told", required = true)
        List<QuotedRate> quoted) {
  private static final String FILE = "defaults/ventilation.yaml";

  /** Copies the lists; refuses a table that leaves a case out. */
  public VentilationDefaults {
    deratings = List.copyOf(deratings);
    runHours = List.copyOf(runHours);
    unstatedFlows = List.copyOf(unstatedFlows);
    leakage = List.copyOf(leakage);
    quoted = List.copyOf(quoted);
    airing = List.copyOf(airing);
    Rows.every("deratings", DuctRun.values(), deratings.stream().map(Derating::run).toList());
    Rows.every("run_hours", RunPattern.values(), runHours.stream().map(RunHours::run).toList());
    Rows.every(
        "unstated_flows", FanSort.values(), unstatedFlows.stream().map(UnstatedFlow::fan).toList());
    if (leakage.stream().filter(LeakageMethod::likely).count() != 1) {
      throw new IllegalArgumentException("exactly one leakage method that is likely");
    }
    if (airing.stream().filter(AiringWeather::winter).count() != 1) {
      throw new IllegalArgumentException("exactly one weather for airing that is of winter");
    }
  }

  /** The bundled defaults. */
  public static VentilationDefaults bundled() {
    return DataFiles.read(FILE, VentilationDefaults.class);
  }

  /** What is left of a declared flow of a fan that blows so far. */
  public Derating derating(DuctRun run) {
    return deratings.stream().filter(row -> row.run() == run).findFirst().orElseThrow();
  }

  /** How long a fan runs. */
  public RunHours hours(RunPattern run) {
    return runHours.stream().filter(row -> row.run() == run).findFirst().orElseThrow();
  }

  /** The flow of a fan of which the survey says none. */
  public UnstatedFlow unstated(FanSort fan) {
    return unstatedFlows.stream().filter(row -> row.fan() == fan).findFirst().orElseThrow();
  }
}
