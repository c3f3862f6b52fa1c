package org.drysill.yaml;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * A date with or without a time of day, in local time of the place.
 *
 * @param date the day
 * @param time the time of day, where it was written
 */
public record Moment(LocalDate date, Optional<LocalTime> time) {}
