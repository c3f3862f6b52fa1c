package org.drysill.assess.ventilation.provided;

import java.util.Optional;
import org.drysill.assess.ventilation.provided.FanFlow.Counting;
import org.drysill.reference.ventilation.FanSort;
import org.drysill.survey.AirSource;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/** How the fans of a survey count, and why. */
final class FanClasses {
  private FanClasses() {}

  /** A unit that takes its air from a room of the home brings in none from outside. */
  static Counting counting(Fan fan) {
    boolean within = fan.airSource().equals(Optional.of(AirSource.ROOM));
    Counting counting = counting(fan.kind());
    return within && counting == Counting.SUPPLY ? Counting.NOTHING : counting;
  }

  static Counting counting(FanKind kind) {
    return switch (kind) {
      case INTERMITTENT_EXTRACT, CONTINUOUS_EXTRACT, EXTRACT_HOOD, PASSIVE_STACK ->
          Counting.EXTRACT;
      case POSITIVE_INPUT -> Counting.SUPPLY;
      case ALTERNATING_HEAT_RECOVERY -> Counting.ALTERNATING;
      case SIMULTANEOUS_HEAT_RECOVERY, BALANCED_HEAT_RECOVERY -> Counting.EXCHANGE;
      case RECIRCULATING_HOOD, FITTED_BUT_NOT_WORKING -> Counting.NOTHING;
    };
  }

  /** The sort under which planning assumptions list it; of what moves no air its nearest. */
  static FanSort sort(FanKind kind) {
    return switch (kind) {
      case INTERMITTENT_EXTRACT, FITTED_BUT_NOT_WORKING -> FanSort.INTERMITTENT_EXTRACT;
      case CONTINUOUS_EXTRACT -> FanSort.CONTINUOUS_EXTRACT;
      case EXTRACT_HOOD, RECIRCULATING_HOOD -> FanSort.EXTRACT_HOOD;
      case POSITIVE_INPUT -> FanSort.POSITIVE_INPUT;
      case ALTERNATING_HEAT_RECOVERY -> FanSort.ALTERNATING;
      case SIMULTANEOUS_HEAT_RECOVERY -> FanSort.SINGLE_ROOM_EXCHANGE;
      case BALANCED_HEAT_RECOVERY -> FanSort.WHOLE_HOME_EXCHANGE;
      case PASSIVE_STACK -> FanSort.PASSIVE_STACK;
    };
  }

  /** True for what is made to run all the time. */
  static boolean madeToRunAlways(FanKind kind) {
    return switch (kind) {
      case CONTINUOUS_EXTRACT,
          POSITIVE_INPUT,
          ALTERNATING_HEAT_RECOVERY,
          SIMULTANEOUS_HEAT_RECOVERY,
          BALANCED_HEAT_RECOVERY,
          PASSIVE_STACK ->
          true;
      case INTERMITTENT_EXTRACT, EXTRACT_HOOD, RECIRCULATING_HOOD, FITTED_BUT_NOT_WORKING -> false;
    };
  }

  static String why(Fan fan) {
    return switch (fan.kind()) {
      case INTERMITTENT_EXTRACT, EXTRACT_HOOD ->
          "Takes air out while it runs; outdoor air comes in elsewhere.";
      case CONTINUOUS_EXTRACT -> "Takes air out all the time; outdoor air comes in elsewhere.";
      case PASSIVE_STACK -> "Draws air out by warmth and wind; it has no fan.";
      case POSITIVE_INPUT -> input(fan);
      case ALTERNATING_HEAT_RECOVERY -> alternating(fan);
      case SIMULTANEOUS_HEAT_RECOVERY, BALANCED_HEAT_RECOVERY ->
          "Brings in as much outdoor air as it takes out.";
      case RECIRCULATING_HOOD ->
          "Blows the air back into the room: it filters grease and takes no moisture out, so it"
              + " counts nothing.";
      case FITTED_BUT_NOT_WORKING -> "Fitted but moves no air, so it counts nothing.";
    };
  }

  private static String input(Fan fan) {
    String blows = "Blows air in; indoor air goes out through leaks and openings.";
    return fan.airSource()
        .map(
            source ->
                switch (source) {
                  case LOFT ->
                      blows
                          + " It takes it from the loft, which is a little warmer than outdoors in"
                          + " the daytime; where the loft is moist or its hatch leaks, moisture of"
                          + " the home comes back with it.";
                  case OUTSIDE_WALL ->
                      blows + " It takes it from outdoors, as cold as it is there.";
                  case ROOM ->
                      "Moves air from one room of the home to another and brings in none from"
                          + " outside, so it counts nothing.";
                })
        .orElse(blows);
  }

  private static String alternating(Fan fan) {
    String half = "Blows in for one half of each cycle and out for the other, so half of its flow";
    return fan.pairedWith()
        .map(
            other ->
                half
                    + " is exchanged; its partner "
                    + other
                    + " blows the other way, and the two leave the pressure of the home alone.")
        .orElse(
            half
                + " is exchanged; without a partner it is neutral over a whole cycle, and counted"
                + " so.");
  }
}
