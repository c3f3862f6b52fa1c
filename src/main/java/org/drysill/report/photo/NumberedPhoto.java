package org.drysill.report.photo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.photo.Picture;

/**
 * A photograph of the report.
 *
 * @param number its number in the report, from 1
 * @param visit the day of the visit whose survey names it
 * @param places what it shows, the place that names it first first
 * @param caption what is to be seen, where the survey says it
 * @param picture the picture
 */
public record NumberedPhoto(
    int number, LocalDate visit, List<Place> places, Optional<String> caption, Picture picture) {
  /** Copies the list. */
  public NumberedPhoto {
    places = List.copyOf(places);
  }

  /**
   * A place that a photograph shows.
   *
   * @param room the id of its room; empty for the home as a whole
   * @param item the id of the window, cold spot or fan; empty for the room as a whole
   * @param words how it is called
   */
  public record Place(Optional<String> room, Optional<String> item, String words) {}

  /** The same photograph of one more place. */
  NumberedPhoto with(Place place) {
    List<Place> more = new ArrayList<>(places);
    more.add(place);
    return new NumberedPhoto(number, visit, more, caption, picture);
  }

  boolean shows(Place place) {
    return places.stream()
        .anyMatch(p -> p.room().equals(place.room()) && p.item().equals(place.item()));
  }
}
