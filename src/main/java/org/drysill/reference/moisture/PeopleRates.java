package org.drysill.reference.moisture;

import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What people give off.
 *
 * @param asleep an adult asleep [kg/h]
 * @param awake an adult awake at home [kg/h]
 * @param childShare what a child gives off, as a share of an adult
 * @param hoursAsleep hours of sleep a day [h]
 * @param hoursAwakeAway hours awake at home a day where nobody is at home by day [h]
 * @param hoursAwakeHome hours awake at home a day where somebody is at home by day [h]
 */
public record PeopleRates(
    @Key(about = "An adult asleep, in kg/h") Sourced asleep,
    @Key(about = "An adult awake at home, in kg/h") Sourced awake,
    @Key(about = "What a child gives off, as a share of an adult") Sourced childShare,
    @Key(about = "Hours of sleep a day") Sourced hoursAsleep,
    @Key(about = "Hours awake at home a day where nobody is at home by day") Sourced hoursAwakeAway,
    @Key(about = "Hours awake at home a day where somebody is at home by day")
        Sourced hoursAwakeHome) {}
