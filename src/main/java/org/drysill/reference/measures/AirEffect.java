package org.drysill.reference.measures;

import java.util.List;
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
 * @param fan the kind of fan that it brings, by its word in a survey; empty for openings and
 *     repairs
 * @param replaces the kinds of fan whose place it takes, in its rooms or, where it serves the whole
 *     home, everywhere
 * @param declaredRecovery share of heat that makers declare
 * @param inUse what is left of a declared share in use
 * @param source where the flow and the shares come from
 */
public record AirEffect(
    @Key(about = "Which way", example = "extract") AirMove moves,
    @Key(about = "Which flow while it runs", example = "continuous rate of the room") FlowRate rate,
    @Key(about = "The flow in l/s, where it is stated here") Optional<Spread> litresPerSecond,
    @Key(about = "How long it runs, in hours a day") Optional<Spread> hoursPerDay,
    @Key(
            about = "Kind of fan that it brings",
            example = "continuous extract",
            vocabulary = "kind of fan")
        Optional<String> fan,
    @Key(
            about = "Kinds of fan whose place it takes",
            example = "[intermittent extract]",
            vocabulary = "kind of fan")
        List<String> replaces,
    @Key(about = "Share of heat that makers declare, as ratio") Optional<Spread> declaredRecovery,
    @Key(about = "What is left of it in use, as ratio") Optional<Spread> inUse,
    @Key(about = "Where these come from") Citation source) {
  private static final double HOURS_OF_A_DAY = 24;

  /** Copies the list; refuses flows, hours and shares that cannot be. */
  public AirEffect {
    replaces = List.copyOf(replaces);
    if (!Spread.isNotNegative(litresPerSecond)) {
      throw new IllegalArgumentException("litres_per_second of 0 or more");
    }
    if (!Spread.isWithin(hoursPerDay, 0, HOURS_OF_A_DAY)) {
      throw new IllegalArgumentException("hours_per_day from 0 to 24");
    }
    if (!Spread.isWithin(declaredRecovery, 0, 1) || !Spread.isWithin(inUse, 0, 1)) {
      throw new IllegalArgumentException("declared_recovery and in_use from 0 to 1");
    }
  }
}
