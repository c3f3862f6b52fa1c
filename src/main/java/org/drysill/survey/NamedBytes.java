package org.drysill.survey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.drysill.survey.check.CheckList;
import org.drysill.survey.check.SurveyCode;
import org.drysill.yaml.FileTrouble;
import org.drysill.yaml.NamedFiles;

/**
 * Reads the bytes of the files that a survey names: photographs, weather, own rules. Logs are read
 * as streams later, for they may be larger than memory.
 */
final class NamedBytes {
  private static final Set<String> OF_LOGS = Set.of("logger.file", "log.file");
  private static final int MEGABYTE = 1024 * 1024;

  /** The most that one file may have: a large photograph. */
  static final long MOST_BYTES = 50L * MEGABYTE;

  /** The most that all files of a survey may have together. */
  static final long MOST_BYTES_TOGETHER = 250L * MEGABYTE;

  private final Path folder;
  private final CheckList list;
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private long together;

  private NamedBytes(Path folder, CheckList list) {
    this.folder = folder;
    this.list = list;
  }

  /** The bytes by the path as written. */
  static Map<String, byte[]> read(Survey survey, Path folder, CheckList list) {
    NamedBytes bytes = new NamedBytes(folder, list);
    NamedFiles.of(survey).forEach(bytes::add);
    return bytes.files;
  }

  private void add(String key, String written) {
    if (OF_LOGS.stream().anyMatch(key::endsWith) || files.containsKey(written)) {
      return;
    }
    try {
      Path file = folder.resolve(written);
      long size = Files.size(file);
      together += size;
      if (size > MOST_BYTES) {
        tooLarge(key, written, MOST_BYTES);
      } else if (together > MOST_BYTES_TOGETHER) {
        tooLarge(key, "all files up to " + written, MOST_BYTES_TOGETHER);
      } else {
        files.put(written, Files.readAllBytes(file));
      }
    } catch (IOException closed) {
      list.add(
          SurveyCode.FILE_UNREADABLE,
          key,
          CheckList.quote(written) + ": " + FileTrouble.why(closed),
          "a readable file");
    }
  }

  private void tooLarge(String key, String found, long most) {
    list.add(
        SurveyCode.FILE_TOO_LARGE,
        key,
        CheckList.quote(found),
        "at most " + most / MEGABYTE + " MB");
  }
}
