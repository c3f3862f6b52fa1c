package org.drysill.reference.moisture;

import org.drysill.yaml.Worded;

/** What an amount of water belongs to, and so which key of a survey multiplies it. */
public enum Per implements Worded {
  /** A day of the household. */
  DAY,
  /** A day of each person. */
  PERSON_DAY,
  /** A load of washing: {@code loads_per_week}. */
  LOAD,
  /** Each time: {@code times_per_week}. */
  TIME,
  /** An hour of use: {@code hours_per_day}. */
  HOUR,
  /** A day of each thing: {@code count}. */
  ITEM_DAY,
  /** A kilowatt-hour of heat: {@code power} and {@code hours_per_day}. */
  KILOWATT_HOUR;

  /** How much of this is in a week, to follow a number. */
  public String counted() {
    return switch (this) {
      case DAY -> "days a week";
      case PERSON_DAY -> "person-days a week";
      case LOAD -> "loads a week";
      case TIME -> "times a week";
      case HOUR -> "hours a week";
      case ITEM_DAY -> "item-days a week";
      case KILOWATT_HOUR -> "kWh a week";
    };
  }
}
