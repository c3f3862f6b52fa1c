package org.drysill.survey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.check.CheckList;
import org.drysill.survey.check.SurveyCode;
import org.drysill.yaml.FileTrouble;

/**
 * The earlier survey of the same home. Its path is the one that may leave the folder of the survey;
 * what it names as its own earlier survey is not followed.
 */
final class Previous {
  private static final String KEY = "visit.previous";
  private static final String DATE = "visit.date";
  private static final String EARLIER = "the file of an earlier survey";

  private Previous() {}

  /** The file of the earlier survey; empty where none is named or it cannot be used. */
  static Optional<Path> find(Survey survey, Path file, CheckList list) {
    return survey.visit().previous().flatMap(written -> find(written, file, list));
  }

  private static Optional<Path> find(String written, Path file, CheckList list) {
    try {
      Path relative = Path.of(written);
      Path earlier = folderOf(file).resolve(relative).normalize();
      if (relative.isAbsolute()) {
        return unusable(written, "a path relative to this file", list);
      }
      if (!Files.isRegularFile(earlier)) {
        String why = Files.isDirectory(earlier) ? ", which is a folder" : ": no such file";
        return unusable(written + why, EARLIER, list);
      }
      if (Files.isSameFile(earlier, file)) {
        return unusable(written + ", which is this file", EARLIER, list);
      }
      return Optional.of(earlier);
    } catch (InvalidPathException notOne) {
      return unusable(written + ", which is no path", EARLIER, list);
    } catch (IOException closed) {
      return unusable(written + ": " + FileTrouble.why(closed), EARLIER, list);
    }
  }

  private static Optional<Path> unusable(String found, String expected, CheckList list) {
    list.add(SurveyCode.PREVIOUS_UNUSABLE, KEY, found, expected);
    return Optional.empty();
  }

  /** Notes that a survey names another earlier one than the one that is given. */
  static void noteOther(Survey survey, Path file, Path given, CheckList list) {
    survey
        .visit()
        .previous()
        .filter(written -> !isSame(written, file, given))
        .ifPresent(
            written ->
                list.add(
                    SurveyCode.PREVIOUS_OTHER,
                    KEY,
                    CheckList.quote(written),
                    // By its name alone: reports print this, and do not depend on where files lie.
                    CheckList.quote(String.valueOf(given.getFileName()))
                        + ", which was given by hand and is compared with in its place"));
  }

  private static boolean isSame(String written, Path file, Path given) {
    try {
      return Files.isSameFile(folderOf(file).resolve(written), given);
    } catch (InvalidPathException | IOException notOne) {
      return false;
    }
  }

  /** The name that problems of the earlier survey are reported under. */
  static String nameOf(Survey survey, String name) {
    String written = survey.visit().previous().orElse("");
    return Path.of(name).resolveSibling(written).normalize().toString();
  }

  static void checkOrder(Survey now, Survey then, CheckList list) {
    LocalDate earlier = then.visit().date();
    LocalDate visit = now.visit().date();
    if (earlier.isAfter(visit)) {
      list.add(
          SurveyCode.PREVIOUS_LATER,
          now.visit().previous().isPresent() ? KEY : DATE,
          "a survey of " + earlier,
          "one from before the visit of " + visit);
    }
  }

  /** Notes an earlier survey of which no room is in the later one: of another home, it seems. */
  static void checkHome(Survey now, Survey then, CheckList list) {
    List<String> rooms = now.rooms().stream().map(Room::id).toList();
    if (then.rooms().stream().map(Room::id).noneMatch(rooms::contains)) {
      list.add(
          SurveyCode.PREVIOUS_OTHER_HOME,
          now.visit().previous().isPresent() ? KEY : DATE,
          "an earlier survey that has none of these rooms",
          "one of the same home, its rooms by the same ids, such as " + rooms.get(0));
    }
  }

  static Path folderOf(Path file) {
    Path parent = file.toAbsolutePath().normalize().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }
}
