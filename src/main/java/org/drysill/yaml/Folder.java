package org.drysill.yaml;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.yaml.ProblemList.Finding;

/**
 * The folder that the paths in a file start from and may not leave, by {@code ..}, by a root or by
 * a symbolic link.
 */
public final class Folder {
  private final Optional<Path> root;

  private Folder(Optional<Path> root) {
    this.root = root;
  }

  /** A folder of the disk: named files must exist in it. */
  public static Folder of(Path root) {
    return new Folder(Optional.of(root));
  }

  /** No folder at hand: paths are looked at, but not for existence. */
  public static Folder unknown() {
    return new Folder(Optional.empty());
  }

  /** What is wrong with a path; empty where nothing is. */
  Optional<Refusal> refusal(String written) {
    Path path;
    try {
      path = Path.of(written);
    } catch (InvalidPathException notOne) {
      return leaves(written);
    }
    if (written.indexOf('\\') >= 0) {
      return Optional.of(
          new Refusal(
              YamlCode.PATH_LEAVES_FOLDER,
              Finding.quoted(written, "a path with / between its parts")
                  .meant(Optional.of(written.replace('\\', '/')))));
    }
    if (path.isAbsolute() || written.matches("[A-Za-z]:.*") || path.normalize().startsWith("..")) {
      return leaves(written);
    }
    return root.flatMap(folder -> onDisk(folder, written));
  }

  private static Optional<Refusal> onDisk(Path folder, String written) {
    Path target = folder.resolve(written);
    if (!Files.isRegularFile(target)) {
      return Optional.of(
          new Refusal(
              YamlCode.NO_SUCH_FILE,
              Finding.of(
                      Finding.quote(written)
                          + (Files.isDirectory(target) ? ", which is a folder" : ""),
                      "an existing file, its path relative to this one")
                  .meant(neighbour(folder, written))));
    }
    try {
      boolean inside = target.toRealPath().startsWith(folder.toRealPath());
      return inside ? Optional.empty() : leaves(written);
    } catch (IOException unreadable) {
      return Optional.of(
          new Refusal(
              YamlCode.NO_SUCH_FILE,
              Finding.of(
                  Finding.quote(written) + ": " + FileTrouble.why(unreadable), "a readable file")));
    }
  }

  private static Optional<Refusal> leaves(String written) {
    return Optional.of(
        new Refusal(
            YamlCode.PATH_LEAVES_FOLDER,
            Finding.quoted(written, "a path relative to this file, within its folder")));
  }

  /** A file of nearly the same name beside the one that is missing. */
  private static Optional<String> neighbour(Path folder, String written) {
    Path parent = folder.resolve(written).normalize().getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return Optional.empty();
    }
    try (Stream<Path> siblings = Files.list(parent)) {
      List<String> names =
          siblings
              .filter(Files::isRegularFile)
              .map(file -> folder.normalize().relativize(file.normalize()).toString())
              .map(name -> name.replace('\\', '/'))
              .sorted()
              .toList();
      return Nearest.of(written, names);
    } catch (IOException | UncheckedIOException closed) {
      return Optional.empty();
    }
  }

  /** Why a path is refused. */
  record Refusal(YamlCode code, Finding finding) {}
}
