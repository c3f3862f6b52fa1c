package org.drysill.survey.photo;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drysill.survey.Survey;
import org.drysill.survey.check.CheckList;
import org.drysill.yaml.NamedFiles;

/** The photographs of a survey, each file made ready once. */
public final class Pictures {
  private static final String PHOTO = "photos[";

  private Pictures() {}

  /**
   * Makes ready whatever can be printed.
   *
   * @param survey the survey
   * @param files the bytes by the path as written
   * @param list where files that cannot be printed are noted, at the line that names them
   * @return pictures by the path as written
   */
  public static Map<String, Picture> read(
      Survey survey, Map<String, byte[]> files, CheckList list) {
    Map<String, Picture> pictures = new LinkedHashMap<>();
    Set<String> tried = new TreeSet<>();
    NamedFiles.of(survey)
        .forEach(
            (key, written) -> {
              if (key.contains(PHOTO) && files.containsKey(written) && tried.add(written)) {
                read(key, written, files.get(written), list, pictures);
              }
            });
    return Collections.unmodifiableMap(pictures);
  }

  private static void read(
      String key, String written, byte[] file, CheckList list, Map<String, Picture> pictures) {
    try {
      pictures.put(written, PictureReader.read(file));
    } catch (BadPicture bad) {
      list.add(bad.code(), key, CheckList.quote(written) + ", " + bad.found(), bad.expected());
    }
  }
}
