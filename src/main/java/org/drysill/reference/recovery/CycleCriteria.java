package org.drysill.reference.recovery;

import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What a log of temperatures through the cycles of an alternating unit must show.
 *
 * @param halfCycle usual, shortest and longest half-cycle [s]
 * @param leastSwing least swing at the grille [K]
 * @param swingOverNoise least swing by the scatter of a reading [1]
 * @param leastSamples fewest readings in a half-cycle
 * @param enoughSamples readings in a half-cycle from which a log is not weak
 * @param fewestCycles fewest whole cycles
 * @param enoughCycles whole cycles from which a log is not weak
 * @param uneven most that the length of a cycle may differ from the median, share of it
 * @param unequal halves that differ by less are taken as equal, share of a half-cycle
 * @param slowThermometer time constant above which a log is weak, share of a half-cycle
 * @param lagError share of its correction by which the lag may be wrong [1]
 * @param lagErrorSlow the same above that time constant [1]
 * @param coverage how many standard errors of the mean over cycles count [1]
 */
public record CycleCriteria(
    @Key(about = "Usual, shortest and longest half-cycle, s") Sourced halfCycle,
    @Key(about = "Least swing at the grille, K") Sourced leastSwing,
    @Key(about = "Least swing by the scatter of a reading") Sourced swingOverNoise,
    @Key(about = "Fewest readings in a half-cycle") Sourced leastSamples,
    @Key(about = "Readings in a half-cycle that are enough") Sourced enoughSamples,
    @Key(about = "Fewest whole cycles") Sourced fewestCycles,
    @Key(about = "Whole cycles that are enough") Sourced enoughCycles,
    @Key(about = "Most that the length of a cycle may differ, share") Sourced uneven,
    @Key(about = "Halves that differ by less are equal, share") Sourced unequal,
    @Key(about = "Time constant of a slow thermometer, share of a half-cycle")
        Sourced slowThermometer,
    @Key(about = "Error of the lag that is taken out, share") Sourced lagError,
    @Key(about = "The same for a slow thermometer, share") Sourced lagErrorSlow,
    @Key(about = "Standard errors of the mean over cycles that count") Sourced coverage) {}
