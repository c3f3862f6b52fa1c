package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drysill.assess.Assumption;
import org.drysill.reference.model.ModelDefaults;

/** What is taken for granted where the readings of all rooms are put together. */
final class ModelAssumptions {
  private ModelAssumptions() {}

  static List<Assumption> of(ModelDefaults defaults, boolean doors, boolean panes) {
    List<Assumption> all = new ArrayList<>();
    all.add(moment(defaults));
    all.add(people(defaults));
    if (doors) {
      all.add(
          new Assumption(
              "model.door",
              "Air that passes both ways through a door",
              defaults.door().exchange().written() + ", " + defaults.door().between().written(),
              "how long a door stands open was not recorded",
              "Note for each door whether it is usually open or shut.",
              defaults.door().source()));
    }
    if (panes) {
      all.add(
          new Assumption(
              "model.glass_share",
              "Glass by the area of a window's opening",
              percent(defaults.glassShare().likely()),
              "frames were not measured",
              "Measure the glass of the windows that run with water.",
              defaults.glassShare().source()));
    }
    return all;
  }

  private static Assumption moment(ModelDefaults defaults) {
    return new Assumption(
        "model.moment",
        "Readings of a moment as the mean of days",
        "plus or minus "
            + percent(defaults.moment().likely())
            + " in common, and "
            + percent(defaults.momentOfRoom().likely())
            + " of each room (standard deviations)",
        "air and furniture store water, and nobody lives evenly",
        "Leave loggers in the rooms and outdoors for a week or more.",
        defaults.moment().source());
  }

  private static Assumption people(ModelDefaults defaults) {
    return new Assumption(
        "model.people",
        "Where in the home water is given off",
        "where the survey lists it; people by the use of rooms, a room's part within a factor of "
            + String.format(Locale.ROOT, "%.1f", Math.exp(2 * defaults.roomPart().likely())),
        "people and steam move about",
        "List each source in its room.",
        defaults.peopleSource());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }
}
