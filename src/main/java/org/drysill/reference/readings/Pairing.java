package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * When two readings count as taken together: a surface and the air beside it, indoor and outdoor
 * air.
 *
 * @param withinHours how far apart in time they may lie [h]
 * @param source why so far
 */
public record Pairing(
    @Key(about = "How many hours apart two readings may lie", min = 0, max = 24) double withinHours,
    @Key(about = "Why so far") Citation source) {}
