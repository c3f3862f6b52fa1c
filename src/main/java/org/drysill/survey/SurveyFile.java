package org.drysill.survey;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.photo.Picture;
import org.drysill.yaml.Problem;

/**
 * A survey that could be read, with what the rest of the program may want to say about its file.
 *
 * @param survey the survey
 * @param previous the earlier survey that it names, already read
 * @param name the file's name as the user gave it
 * @param text the file's text, for the input record
 * @param warnings what is odd but usable
 * @param files the bytes of every file that it names, by the path as written, logs aside
 * @param pictures the photographs among them, ready for print, by the path as written
 * @param folder the folder that its paths start from
 * @param shared true for a copy without names, addresses, photographs and free words, of which the
 *     text is for its hash alone
 */
public record SurveyFile(
    Survey survey,
    Optional<SurveyFile> previous,
    String name,
    String text,
    List<Problem> warnings,
    Map<String, byte[]> files,
    Map<String, Picture> pictures,
    Path folder,
    boolean shared) {
  /** Copies the collections. */
  public SurveyFile {
    warnings = List.copyOf(warnings);
    files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
    pictures = Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
  }

  /** The same file, its survey changed in what it asks of the report. */
  public SurveyFile with(Survey other) {
    return new SurveyFile(other, previous, name, text, warnings, files, pictures, folder, shared);
  }
}
