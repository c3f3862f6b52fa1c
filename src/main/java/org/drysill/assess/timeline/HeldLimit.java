package org.drysill.assess.timeline;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A day against a limit of time.
 *
 * @param what what is to be done
 * @param length how long the limit is, such as {@code 10 working days}
 * @param from the event from which it counts
 * @param until the event that ends it
 * @param start the day of the first
 * @param lastDay the last day within the limit; empty where the first is not in the timeline
 * @param done the day of the second
 * @param standing how the second day stands to the limit
 * @param daysLate by how many days of the calendar it came after the last day; 0 unless later
 * @param because what is missing where it cannot be told; otherwise empty
 */
public record HeldLimit(
    String what,
    String length,
    String from,
    String until,
    Optional<LocalDate> start,
    Optional<LocalDate> lastDay,
    Optional<LocalDate> done,
    Standing standing,
    int daysLate,
    String because) {}
