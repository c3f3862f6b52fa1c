package org.drysill;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.evidence.InputRole;
import org.drysill.report.evidence.Sha256;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.log.LogFile;
import org.drysill.survey.log.Logs;
import org.drysill.yaml.NamedFiles;

/** Gathers what a report was made from: surveys, and the files that they name. */
final class InputFiles {
  private final Map<String, InputFile> files = new LinkedHashMap<>();
  private long together;

  private InputFiles() {}

  /**
   * The files of a report, each once: those of the visit before those of the earlier one.
   *
   * @param file the survey, with the earlier one
   * @param logs its logs
   * @param logsBefore the logs of the earlier survey
   */
  static List<InputFile> of(SurveyFile file, Logs logs, Logs logsBefore) {
    InputFiles inputs = new InputFiles();
    InputFolders folders = file.shared() ? new InputFolders("", "") : InputFolders.of(file);
    inputs.add(file, InputRole.SURVEY, folders.visit(), logs);
    file.previous()
        .ifPresent(
            then -> inputs.add(then, InputRole.EARLIER_SURVEY, folders.earlier(), logsBefore));
    return new ArrayList<>(inputs.files.values());
  }

  private void add(SurveyFile survey, InputRole role, String folder, Logs logs) {
    if (survey.shared()) {
      addDigests(survey, role, logs);
      return;
    }
    add(folder + survey.path().getFileName(), role, survey.bytes());
    NamedFiles.of(survey.survey())
        .forEach(
            (key, written) -> {
              String name = folder + slashed(Path.of(written).normalize());
              byte[] bytes = survey.files().get(written);
              if (bytes != null) {
                add(name, InputRole.of(key), bytes);
              } else {
                addLog(name, survey.folder().resolve(written), digest(logs, written));
              }
            });
  }

  /** Of a copy to share, whose names are not those of any file. */
  private void addDigests(SurveyFile survey, InputRole role, Logs logs) {
    put(survey.name(), role, Sha256.of(survey.bytes()), Optional.empty());
    survey
        .files()
        .forEach((name, all) -> put(name, InputRole.OTHER, Sha256.of(all), Optional.empty()));
    logs.all().forEach(log -> put(log.file(), InputRole.LOG, log.sha256(), Optional.empty()));
  }

  private static String slashed(Path path) {
    return path.toString().replace('\\', '/');
  }

  private static String digest(Logs logs, String written) {
    return logs.all()
        .filter(log -> log.file().equals(written))
        .map(LogFile::sha256)
        .findFirst()
        .orElse("");
  }

  private void add(String name, InputRole role, byte[] bytes) {
    boolean inside = role != InputRole.PHOTOGRAPH && fits(bytes.length);
    put(name, role, Sha256.of(bytes), Optional.of(bytes).filter(all -> inside));
  }

  private boolean fits(long size) {
    return size <= InputFile.MOST_BYTES && together + size <= InputFile.MOST_BYTES_TOGETHER;
  }

  /**
   * A log was read as a stream and is read again here; one that changed in between is not put
   * inside, for it is not what the figures rest on.
   */
  private void addLog(String name, Path file, String sha256) {
    if (sha256.isEmpty() || files.containsKey(name)) {
      return;
    }
    try {
      long size = Files.size(file);
      Optional<byte[]> content =
          fits(size)
              ? Optional.of(Files.readAllBytes(file)).filter(b -> Sha256.of(b).equals(sha256))
              : Optional.empty();
      put(name, InputRole.LOG, sha256, content);
    } catch (IOException gone) {
      put(name, InputRole.LOG, sha256, Optional.empty());
    }
  }

  private void put(String name, InputRole role, String sha256, Optional<byte[]> content) {
    if (files.putIfAbsent(name, new InputFile(name, role, sha256, content)) == null) {
      together += content.map(bytes -> (long) bytes.length).orElse(0L);
    }
  }
}
