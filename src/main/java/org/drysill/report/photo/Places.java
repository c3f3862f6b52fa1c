package org.drysill.report.photo;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.drysill.report.photo.NumberedPhoto.Place;
import org.drysill.report.words.Words;
import org.drysill.survey.Photo;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;

/** Goes through the photographs of a survey: the home, then room by room. */
final class Places {
  private final BiConsumer<Photo, Place> visit;

  private Places(BiConsumer<Photo, Place> visit) {
    this.visit = visit;
  }

  static void visit(Survey survey, BiConsumer<Photo, Place> visit) {
    Places places = new Places(visit);
    Place home = new Place(Optional.empty(), Optional.empty(), "The home");
    survey.visit().photos().forEach(photo -> visit.accept(photo, home));
    survey.rooms().forEach(places::room);
  }

  private void room(Room room) {
    String name = room.name().orElse(room.id().replace('-', ' ').replace('_', ' '));
    Place whole = new Place(Optional.of(room.id()), Optional.empty(), Words.capital(name));
    room.photos().forEach(photo -> visit.accept(photo, whole));
    room.windows().forEach(w -> item(whole, w.id(), w.name().orElse("window"), w.photos()));
    room.coldSpots()
        .forEach(s -> item(whole, s.id(), s.name().orElse(s.kind().word()), s.photos()));
    room.fans().forEach(f -> item(whole, f.id(), f.name().orElse(f.kind().word()), f.photos()));
  }

  private void item(Place room, String id, String name, List<Photo> photos) {
    Place place = new Place(room.room(), Optional.of(id), room.words() + ", " + Words.within(name));
    photos.forEach(photo -> visit.accept(photo, place));
  }
}
