package org.drysill.report.photo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.drysill.report.photo.NumberedPhoto.Place;
import org.drysill.report.words.Words;
import org.drysill.survey.Photo;
import org.drysill.survey.SurveyFile;

/**
 * The photographs of a report by number: those of the earlier visit, then those of this one. A file
 * that stands at several places has one number.
 *
 * @param now those of the visit
 * @param before those of the earlier visit
 */
public record PhotoIndex(List<NumberedPhoto> now, List<NumberedPhoto> before) {
  /** Copies the lists. */
  public PhotoIndex {
    now = List.copyOf(now);
    before = List.copyOf(before);
  }

  /** The photographs that a survey and the earlier one name. */
  public static PhotoIndex of(SurveyFile file) {
    List<NumberedPhoto> before = file.previous().map(then -> numbered(then, 1)).orElse(List.of());
    return new PhotoIndex(numbered(file, before.size() + 1), before);
  }

  private static List<NumberedPhoto> numbered(SurveyFile file, int first) {
    Map<String, NumberedPhoto> photos = new LinkedHashMap<>();
    LocalDate day = file.survey().visit().date();
    Places.visit(file.survey(), (photo, place) -> add(photos, file, photo, place, day, first));
    return List.copyOf(photos.values());
  }

  private static void add(
      Map<String, NumberedPhoto> photos,
      SurveyFile file,
      Photo photo,
      Place place,
      LocalDate day,
      int first) {
    NumberedPhoto known = photos.get(photo.file());
    if (known != null) {
      photos.put(photo.file(), known.with(place));
    } else if (file.pictures().containsKey(photo.file())) {
      photos.put(
          photo.file(),
          new NumberedPhoto(
              first + photos.size(),
              day,
              List.of(place),
              photo.caption(),
              file.pictures().get(photo.file())));
    }
  }

  /** True where there is none. */
  public boolean isEmpty() {
    return now.isEmpty() && before.isEmpty();
  }

  /** How the photographs of the home as a whole are pointed to; empty where there is none. */
  public Optional<String> ofHome() {
    return pointer(place -> place.room().isEmpty());
  }

  /** How the photographs of a room and of all in it are pointed to; empty where there is none. */
  public Optional<String> ofRoom(String room) {
    return pointer(place -> place.room().filter(room::equals).isPresent());
  }

  /** How the photographs of a window, cold spot or fan are pointed to. */
  public Optional<String> ofItem(String item) {
    return pointer(place -> place.item().filter(item::equals).isPresent());
  }

  /** {@code photo 3}, or {@code photos 3 and 8}, of either visit. */
  private Optional<String> pointer(Predicate<Place> wanted) {
    List<NumberedPhoto> all = new ArrayList<>(before);
    all.addAll(now);
    List<String> numbers =
        all.stream()
            .filter(photo -> photo.places().stream().anyMatch(wanted))
            .map(photo -> Integer.toString(photo.number()))
            .toList();
    return numbers.isEmpty()
        ? Optional.empty()
        : Optional.of((numbers.size() == 1 ? "photo " : "photos ") + Words.list(numbers));
  }
}
