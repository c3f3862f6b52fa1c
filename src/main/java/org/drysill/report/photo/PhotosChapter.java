package org.drysill.report.photo;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.report.block.Block;
import org.drysill.report.block.PhotoCell;
import org.drysill.report.block.PhotoRow;
import org.drysill.report.block.Photos;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.photo.NumberedPhoto.Place;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;
import org.drysill.survey.photo.Picture;

/** The photographs; of places that were photographed at both visits, before and after in pairs. */
public final class PhotosChapter implements Chapter {
  /** The chapter. */
  public static final Chapter CHAPTER = new PhotosChapter();

  private PhotosChapter() {}

  @Override
  public Optional<Section> write(Desk desk) {
    PhotoIndex photos = desk.photos();
    return photos.isEmpty() ? Optional.empty() : Optional.of(section(photos));
  }

  private static Section section(PhotoIndex photos) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "Each photograph is turned upright and made smaller for print. What else its file held,"
                + " such as the place and the time of the shot, is left out; the files themselves"
                + " are named with their hashes in the input record."));
    List<PhotoRow> pairs = pairs(photos);
    List<String> paired =
        pairs.stream().flatMap(r -> r.cells().stream()).map(PhotoCell::number).toList();
    group(blocks, "The same places before and after", pairs);
    group(blocks, pairs.isEmpty() ? "" : "At this visit", rows(left(photos.now(), paired)));
    group(blocks, "At the earlier visit", rows(left(photos.before(), paired)));
    return new Section("photos", heading(photos), "Photographs", false, blocks);
  }

  private static String heading(PhotoIndex photos) {
    int all = photos.now().size() + photos.before().size();
    long places =
        Stream.concat(photos.now().stream(), photos.before().stream())
            .flatMap(p -> p.places().stream())
            .map(Place::words)
            .distinct()
            .count();
    return Words.capital(Words.count(all, "photograph", "photographs"))
        + " of "
        + Words.count((int) places, "place", "places");
  }

  private static void group(List<Block> blocks, String head, List<PhotoRow> rows) {
    if (!rows.isEmpty()) {
      if (!head.isEmpty()) {
        blocks.add(new Subhead(List.of(), head));
      }
      blocks.add(Photos.of(rows));
    }
  }

  private static List<NumberedPhoto> left(List<NumberedPhoto> photos, List<String> paired) {
    return photos.stream().filter(p -> !paired.contains(Integer.toString(p.number()))).toList();
  }

  private static List<PhotoRow> rows(List<NumberedPhoto> photos) {
    List<PhotoRow> rows = new ArrayList<>();
    for (int i = 0; i < photos.size(); i += 2) {
      rows.add(
          new PhotoRow(
              photos.subList(i, Math.min(i + 2, photos.size())).stream()
                  .map(p -> cell(p, ""))
                  .toList()));
    }
    return rows;
  }

  /**
   * The first of the earlier visit that shows a place goes with the first of this one, and so on.
   */
  private static List<PhotoRow> pairs(PhotoIndex photos) {
    List<NumberedPhoto> free = new ArrayList<>(photos.before());
    List<PhotoRow> pairs = new ArrayList<>();
    for (NumberedPhoto now : photos.now()) {
      Place place = now.places().get(0);
      free.stream()
          .filter(then -> then.shows(place))
          .findFirst()
          .ifPresent(
              then -> {
                free.remove(then);
                pairs.add(new PhotoRow(List.of(dated(then), dated(now))));
              });
    }
    return pairs;
  }

  private static PhotoCell dated(NumberedPhoto photo) {
    return cell(photo, Words.date(photo.visit()) + ". ");
  }

  private static PhotoCell cell(NumberedPhoto photo, String date) {
    Picture picture = photo.picture();
    String where = String.join("; ", photo.places().stream().map(Place::words).toList());
    return new PhotoCell(
        Integer.toString(photo.number()),
        "Photo " + photo.number() + ".",
        date + Words.sentence(where) + photo.caption().map(c -> " " + Words.sentence(c)).orElse(""),
        where + ": " + photo.caption().orElse("photograph without a caption"),
        "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(picture.jpeg()),
        millimetres(picture.widthMm()),
        millimetres(picture.heightMm()));
  }

  private static String millimetres(double length) {
    return String.format(Locale.ROOT, "%.1f", length);
  }
}
