package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * Who lives in the home, by number only.
 *
 * @param adults adults
 * @param children children
 * @param homeByDay somebody is at home on most days
 */
public record Occupants(
    @Key(about = "Adults", min = 0, max = 50, high = 8, example = "2") Optional<Integer> adults,
    @Key(about = "Children", min = 0, max = 50, high = 8, example = "1") Optional<Integer> children,
    @Key(about = "Somebody is at home on most days", example = "yes") Optional<YesNo> homeByDay) {}
