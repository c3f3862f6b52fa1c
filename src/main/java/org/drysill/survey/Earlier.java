package org.drysill.survey;

import java.nio.file.Path;
import java.util.Optional;
import org.drysill.survey.check.CheckList;

/** Which earlier survey belongs to a survey. */
interface Earlier {
  /** None: what an earlier survey names as its own earlier one is not followed. */
  Earlier NONE = (survey, file, name, list) -> Optional.empty();

  /** The one that the survey names. */
  Earlier NAMED =
      (survey, file, name, list) ->
          survey.flatMap(
              now ->
                  Previous.find(now, file, list)
                      .map(path -> new Found(path, Previous.nameOf(now, name))));

  /** One that is given; where the survey names another, that is noted. */
  static Earlier given(Path path) {
    return (survey, file, name, list) -> {
      survey.ifPresent(now -> Previous.noteOther(now, file, path, list));
      return Optional.of(new Found(path, path.toString()));
    };
  }

  /**
   * The file of the earlier survey; what is wrong with it is noted in the list.
   *
   * @param survey the survey as far as it can be read
   * @param file its file
   * @param name the name of that file for its reader
   * @param list where problems are noted
   */
  Optional<Found> find(Optional<Survey> survey, Path file, String name, CheckList list);

  /**
   * A file.
   *
   * @param path where it is
   * @param name the name that its problems are reported under
   */
  record Found(Path path, String name) {}
}
