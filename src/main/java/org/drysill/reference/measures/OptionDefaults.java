package org.drysill.reference.measures;

import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * How the effect of single measures is reckoned and when they are worth telling.
 *
 * @param gains by how much sun, people and appliances warm a home [K]
 * @param coldRoom below this a room is cold [°C]
 * @param recoveryInUse what is left in use of a declared heat recovery, as ratio
 * @param machineHeatUseful share of the heat of a machine in the room that spares heating, as ratio
 * @param flowLost share of its declared flow below which a fan lost flow on the way
 * @param repairedFlow share of the declared flow after a duct was repaired
 * @param mostRemoved the most that a machine takes of the water given off, as ratio
 * @param leastEffect a change of the vapour excess below this is none, as ratio
 * @param sameAir share of the air from which it counts as the same
 * @param leakyHome air changes at 50 Pa above which a home leaks much [1/h]
 * @param singlePaneU a pane above this transmittance is a single one [W/(m²·K)]
 * @param step coarseness in which progress is compared, as ratio
 * @param packageStep coarseness in which packages are compared that do not reach the goal, as ratio
 * @param mostPackages the most packages that are evaluated; measures are left out until they are
 *     few enough
 * @param bestPackages how many of the best packages tell what to do first and what in no case
 * @param samples how many samples of all that is not known each of the best packages is held
 *     against
 * @param sureEnough the chance of enough air and sound walls from which a package counts as sure,
 *     as ratio
 * @param store how many times the vapour of its air a furnished room stores
 * @param humidAir relative humidity from which the air of a room counts as humid, as ratio
 * @param aboutACentury paybacks that are called about a century [a]
 * @param longestPayback beyond this a payback is called never [a]
 * @param kgPerLoad water that a load of washing gives off [kg]
 * @param windowSide side of a window that was not measured [m]
 * @param solidWallU transmittance of a solid wall of which no layers are known [W/(m²·K)]
 * @param cavityWallU the same of a wall with an empty cavity [W/(m²·K)]
 */
public record OptionDefaults(
    @Key(about = "Kelvin by which free heat warms a home") Sourced gains,
    @Key(about = "Below this a room is cold, in C") Sourced coldRoom,
    @Key(about = "What is left in use of a declared recovery") Sourced recoveryInUse,
    @Key(about = "Share of a machine's heat that spares heating") Sourced machineHeatUseful,
    @Key(about = "Share of the declared flow below which flow was lost") Sourced flowLost,
    @Key(about = "Share of the declared flow after repair") Sourced repairedFlow,
    @Key(about = "Most that a machine takes of the water given off") Sourced mostRemoved,
    @Key(about = "Change of the vapour excess below which there is none") Sourced leastEffect,
    @Key(about = "Share of the air from which it is the same") Sourced sameAir,
    @Key(about = "Air changes at 50 Pa above which a home leaks much") Sourced leakyHome,
    @Key(about = "Transmittance above which a pane is single") Sourced singlePaneU,
    @Key(about = "Coarseness in which progress is compared") Sourced step,
    @Key(about = "Coarseness in which packages are compared") Sourced packageStep,
    @Key(about = "Most packages that are evaluated") Sourced mostPackages,
    @Key(about = "Best packages that are looked at together") Sourced bestPackages,
    @Key(about = "Packages of the front that are followed hour by hour in samples")
        Sourced frontByHour,
    @Key(about = "Samples of all that is not known") Sourced samples,
    @Key(about = "Chance from which a package counts as sure") Sourced sureEnough,
    @Key(about = "How many times the vapour of its air a room stores") Sourced store,
    @Key(about = "Relative humidity from which air counts as humid") Sourced humidAir,
    @Key(about = "Paybacks called about a century, in years") Sourced aboutACentury,
    @Key(about = "Payback called never, in years") Sourced longestPayback,
    @Key(about = "Water that a load of washing gives off, in kg") Sourced kgPerLoad,
    @Key(about = "Side of a window that was not measured, in m") Sourced windowSide,
    @Key(about = "Transmittance of a solid wall of unknown layers, in W/(m2 K)") Sourced solidWallU,
    @Key(about = "The same of a wall with an empty cavity") Sourced cavityWallU) {
  /** The published values. */
  public static OptionDefaults read() {
    return DataFiles.read("defaults/options.yaml", OptionDefaults.class);
  }
}
