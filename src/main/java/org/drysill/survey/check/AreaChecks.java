package org.drysill.survey.check;

import java.util.Locale;
import org.drysill.survey.Room;
import org.drysill.survey.RoomUse;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/**
 * The rooms fit into the home. The floor area of the home includes partitions and stairs, so the
 * rooms that people live in come to somewhat less than it; the margins here are judgement.
 */
final class AreaChecks {
  private static final double SOMEWHAT_ABOVE = 1.05;
  private static final double FAR_ABOVE = 1.25;
  private static final double FAR_BELOW = 0.6;

  private AreaChecks() {}

  static void check(Survey survey, CheckList list) {
    double home = survey.dwelling().floorArea().value();
    double rooms =
        survey.rooms().stream()
            .filter(AreaChecks::isLivedIn)
            .flatMap(room -> room.floorArea().stream())
            .mapToDouble(Quantity::value)
            .sum();
    boolean all =
        survey.rooms().stream()
            .filter(AreaChecks::isLivedIn)
            .allMatch(room -> room.floorArea().isPresent());
    String found = square(home) + " for the home and " + square(rooms) + " for its rooms";
    if (rooms > home * FAR_ABOVE) {
      list.add(
          SurveyCode.ROOMS_EXCEED_HOME, "dwelling.floor_area", found, "rooms that fit into it");
    } else if (rooms > home * SOMEWHAT_ABOVE) {
      list.add(SurveyCode.ROOMS_ABOVE_HOME, "dwelling.floor_area", found, "rooms that fit into it");
    } else if (all && rooms < home * FAR_BELOW) {
      list.add(
          SurveyCode.ROOMS_FAR_BELOW_HOME, "dwelling.floor_area", found, "all rooms of the home");
    }
    bedrooms(survey, list);
  }

  private static void bedrooms(Survey survey, CheckList list) {
    long used = survey.rooms().stream().filter(r -> r.use() == RoomUse.BEDROOM).count();
    survey
        .dwelling()
        .bedrooms()
        .filter(told -> used > told)
        .ifPresent(
            told ->
                list.add(
                    SurveyCode.BEDROOMS_DIFFER,
                    "dwelling.bedrooms",
                    told + ", but " + used + " rooms used as bedroom",
                    "one number for both"));
  }

  private static boolean isLivedIn(Room room) {
    return room.use() != RoomUse.LOFT && room.use() != RoomUse.CELLAR;
  }

  private static String square(double area) {
    return String.format(Locale.ROOT, "%.1f m2", area);
  }
}
