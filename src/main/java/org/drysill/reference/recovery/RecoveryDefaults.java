package org.drysill.reference.recovery;

import java.util.List;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What the assessment of heat recovery takes for granted where the survey is silent.
 *
 * @param refusedBelow difference indoors to outdoors [K] below which a test tells nothing
 * @param indicativeBelow difference [K] below which a test is only indicative
 * @param laboratoryDifference difference [K] at which units are tested in the laboratory
 * @param declaredFlowInUse what is left of a declared flow in use, share of it [1]
 * @param singleReadingShare mean over the supply phase of an alternating unit by what a reading at
 *     its start shows [1]
 * @param sleeves pipes by material
 * @param rimInWall by how much the temperature factor of a metal rim exceeds that by conduction
 *     along the pipe alone [1]
 * @param rimAirTemperature temperature of the air at which a rim is judged [°C]
 * @param rimAirHumidity its relative humidity [1]
 * @param sleeveLip length of pipe that the air bathes at each end [m]
 * @param innerFilm film coefficient in the room [W/(m²·K)]
 * @param outerFilm film coefficient outdoors [W/(m²·K)]
 * @param unbalanceShown by how much one flow is less than the other where the report shows what
 *     that does, share of the greater [1]
 * @param cycles what a log of cycles must show
 */
public record RecoveryDefaults(
    @Key(about = "Difference below which a test tells nothing, K") Sourced refusedBelow,
    @Key(about = "Difference below which a test is indicative, K") Sourced indicativeBelow,
    @Key(about = "Difference in the laboratory, K") Sourced laboratoryDifference,
    @Key(about = "What is left of a declared flow in use, share") Sourced declaredFlowInUse,
    @Key(about = "Mean of a supply phase by a reading at its start") Sourced singleReadingShare,
    @Key(about = "Pipes by material") List<SleevePipe> sleeves,
    @Key(about = "Rise of the factor of a metal rim by the wall around it") Sourced rimInWall,
    @Key(about = "Temperature of the air at which a rim is judged, °C") Sourced rimAirTemperature,
    @Key(about = "Its relative humidity, ratio") Sourced rimAirHumidity,
    @Key(about = "Length of pipe that the air bathes, m") Sourced sleeveLip,
    @Key(about = "Film coefficient in the room, W/(m²·K)") Sourced innerFilm,
    @Key(about = "Film coefficient outdoors, W/(m²·K)") Sourced outerFilm,
    @Key(about = "How unlike flows are shown, share") Sourced unbalanceShown,
    @Key(about = "What a log of cycles must show") CycleCriteria cycles) {
  /** Copies the list. */
  public RecoveryDefaults {
    sleeves = List.copyOf(sleeves);
  }

  /** Reads the bundled values. */
  public static RecoveryDefaults bundled() {
    return DataFiles.read("defaults/recovery.yaml", RecoveryDefaults.class);
  }

  /** The pipe of a material. */
  public SleevePipe sleeve(PipeMaterial material) {
    return sleeves.stream().filter(s -> s.material() == material).findFirst().orElseThrow();
  }
}
