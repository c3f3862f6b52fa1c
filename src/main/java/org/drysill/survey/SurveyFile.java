package org.drysill.survey;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.photo.Picture;
import org.drysill.yaml.Problem;
import org.drysill.yaml.TextFile;

/**
 * A survey that could be read, with what the rest of the program may want to say about its file.
 *
 * @param survey the survey
 * @param previous the earlier survey that it names, already read
 * @param name the file's name as the user gave it
 * @param text the file's text, for the input record
 * @param marked whether a byte order mark stood before it
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
    boolean marked,
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
    return new SurveyFile(
        other, previous, name, text, marked, warnings, files, pictures, folder, shared);
  }

  /** The file, byte for byte. */
  public byte[] bytes() {
    String whole = marked ? TextFile.BYTE_ORDER_MARK + text : text;
    return whole.getBytes(StandardCharsets.UTF_8);
  }

  /** Where the file is. */
  public Path path() {
    return folder.resolve(Path.of(name).getFileName());
  }
}
