package org.drysill.survey.log;

import java.time.Instant;

/**
 * Where the oddities of a log begin. The values stand in a data file with their reasons and come in
 * from the caller.
 *
 * @param holdSteps for how many median steps a reading holds at most
 * @param longestHoldS for how long a reading holds at most [s]
 * @param clockSetAfter no logger that was set shows an earlier time
 * @param farJumpS a row further away than this from the row before it has a wrong time [s]
 * @param blockJumpS a row that goes back by more than this begins a block of rows [s]
 * @param lowestCelsius lowest temperature that is believed [°C]
 * @param highestCelsius highest temperature that is believed [°C]
 * @param aboveSaturation by how much a humidity may exceed 1 and count as 1 [ratio]
 * @param lowestHumidity lowest humidity that is believed [ratio]
 * @param saturatedFrom humidity from which a sensor counts as saturated [ratio]
 * @param lowestPpm lowest CO₂ that is believed [ppm]
 * @param highestPpm highest CO₂ that is believed [ppm]
 * @param spikeKelvin how far from both neighbours a temperature is a spike [K]
 * @param spikeHumidity how far from both neighbours a humidity is a spike [ratio]
 * @param spikePpm how far from both neighbours a CO₂ is a spike [ppm]
 * @param stuckS for how long a value may stay the same [s]
 * @param doubtfulCelsius a log whose middle temperature is above this, with no unit stated, may be
 *     in °F [°C]
 */
public record LogLimits(
    double holdSteps,
    double longestHoldS,
    Instant clockSetAfter,
    double farJumpS,
    double blockJumpS,
    double lowestCelsius,
    double highestCelsius,
    double aboveSaturation,
    double lowestHumidity,
    double saturatedFrom,
    double lowestPpm,
    double highestPpm,
    double spikeKelvin,
    double spikeHumidity,
    double spikePpm,
    double stuckS,
    double doubtfulCelsius) {}
