package org.drysill.verify;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.report.evidence.ReportFile;

/**
 * What a report can be made from again.
 *
 * @param files the files inside, and those that were given besides, by their names
 * @param missing the names of files that are neither, photographs aside
 * @param missingPictures the names of photographs that are neither
 */
record Sources(Map<String, byte[]> files, List<String> missing, List<String> missingPictures) {
  static Sources of(ReportFile file, Claim claim, Optional<Path> folder) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>(file.files());
    files.remove(claim.nameOfResults());
    for (Claim.Input input : claim.inputs()) {
      if (folder.isPresent() && !files.containsKey(input.name())) {
        Optional<byte[]> given = given(folder.get().normalize(), input.name());
        given.ifPresent(bytes -> files.put(input.name(), bytes));
      }
    }
    return new Sources(
        Collections.unmodifiableMap(files),
        missing(claim, files, false),
        missing(claim, files, true));
  }

  /** A report may name whatever it likes: only what lies within the folder is read. */
  private static Optional<byte[]> given(Path folder, String name) throws IOException {
    Path file = folder.resolve(name).normalize();
    return file.startsWith(folder) && Files.isRegularFile(file)
        ? Optional.of(Files.readAllBytes(file))
        : Optional.empty();
  }

  private static List<String> missing(Claim claim, Map<String, byte[]> files, boolean pictures) {
    return claim.inputs().stream()
        .filter(input -> input.isPicture() == pictures && !files.containsKey(input.name()))
        .map(Claim.Input::name)
        .toList();
  }
}
