package org.drysill.reference.measures;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * The air that a measure moves.
 *
 * @param moves which way
 * @param rate which flow while it runs
 * @param litresPerSecond the flow, where the rate is stated here [l/s]
 * @param hoursPerDay how long it runs [h/d]; as long as the fan that is there where absent
 * @param replacesExtract true where it takes the place of the extract of its room, or of the fan
 * @param declaredRecovery share of heat that makers declare
 * @param inUse what is left of a declared share in use
 * @param source where the flow and the shares come from
 */
public record AirEffect(
    @Key(about = "Which way", example = "extract") AirMove moves,
    @Key(about = "Which flow while it runs", example = "continuous rate of the room") FlowRate rate,
    @Key(about = "The flow in l/s, where it is stated here") Optional<Spread> litresPerSecond,
    @Key(about = "How long it runs, in hours a day") Optional<Spread> hoursPerDay,
    @Key(about = "Takes the place of what the room has", example = "yes")
        Optional<Boolean> replacesExtract,
    @Key(about = "Share of heat that makers declare, as ratio") Optional<Spread> declaredRecovery,
    @Key(about = "What is left of it in use, as ratio") Optional<Spread> inUse,
    @Key(about = "Where these come from") Citation source) {}
