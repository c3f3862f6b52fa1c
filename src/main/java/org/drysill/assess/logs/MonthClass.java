package org.drysill.assess.logs;

import org.drysill.assess.humidity.ClassIndication;

/**
 * The internal humidity class of a month: its mean excess at its mean outdoor temperature, both of
 * the same hours.
 *
 * @param means the month
 * @param calendar true for a month of the calendar; false for the last days of a log that covers no
 *     month well enough
 * @param humidityClass the class of the likely excess, and those that the instruments' error allows
 */
public record MonthClass(PeriodMeans means, boolean calendar, ClassIndication humidityClass) {}
