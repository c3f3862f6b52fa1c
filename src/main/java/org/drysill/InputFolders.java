package org.drysill;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drysill.survey.SurveyFile;
import org.drysill.yaml.NamedFiles;

/**
 * The folders that files have inside a report. Nothing above the survey's own folder is told of:
 * where the earlier survey lies beside or above it, that folder is called {@code this-visit}.
 *
 * @param visit the folder of the survey: empty, or ending with /
 * @param earlier the folder of the earlier survey, likewise
 */
record InputFolders(String visit, String earlier) {
  private static final String VISIT = "this-visit";
  private static final String EARLIER = "earlier-visit";

  static InputFolders of(SurveyFile file) {
    return file.previous().map(earlier -> of(file, earlier)).orElse(new InputFolders("", ""));
  }

  private static InputFolders of(SurveyFile file, SurveyFile earlier) {
    Optional<Path> named = file.survey().visit().previous().map(p -> resolved(file, p));
    if (!named.equals(Optional.of(earlier.path().normalize()))) {
      return new InputFolders("", free(EARLIER, file) + "/");
    }
    Path way = file.folder().relativize(earlier.folder());
    int up = 0;
    while (up < way.getNameCount() && way.getName(up).toString().equals("..")) {
      up++;
    }
    String rest = slashed(up < way.getNameCount() ? way.subpath(up, way.getNameCount()) : null);
    String visit = VISIT;
    while (rest.startsWith(visit + "/")) {
      visit += "-";
    }
    return new InputFolders((visit + "/").repeat(up), rest);
  }

  private static Path resolved(SurveyFile file, String written) {
    return file.folder().resolve(written).normalize();
  }

  private static String slashed(Path way) {
    if (way == null || way.toString().isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    way.forEach(part -> text.append(part).append('/'));
    return text.toString();
  }

  /** A folder that no file of the survey lies in. */
  private static String free(String name, SurveyFile file) {
    Set<String> taken =
        NamedFiles.of(file.survey()).values().stream()
            .map(written -> Path.of(written).normalize().getName(0).toString())
            .collect(Collectors.toSet());
    String free = name;
    while (taken.contains(free)) {
      free += "-";
    }
    return free;
  }
}
