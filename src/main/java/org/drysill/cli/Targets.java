package org.drysill.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Looks before anything is computed at where files are to be written. */
final class Targets {
  private final CommandSpec spec;
  private final Console console;

  Targets(CommandSpec spec, Console console) {
    this.spec = spec;
    this.console = console;
  }

  /**
   * Refuses to write over what is read, over what else is written, and onto a folder.
   *
   * @param inputs what is read
   * @param outputs what is to be written; null where it is not asked for
   * @return false where a folder is not there, which is told
   * @throws ParameterException where the command asks for what cannot be meant
   */
  boolean areThere(List<Path> inputs, Path... outputs) {
    List<Path> asked = Arrays.stream(outputs).filter(Objects::nonNull).toList();
    List<Path> taken = new ArrayList<>(inputs);
    for (Path output : asked) {
      if (taken.stream().anyMatch(other -> isSame(other, output))) {
        String how = inputs.stream().anyMatch(input -> isSame(input, output)) ? "read" : "written";
        throw refused(output + " is " + how + " by this command already");
      }
      if (Files.isDirectory(output)) {
        throw refused(output + " is a folder; give the name of a file in it");
      }
      taken.add(output);
    }
    return asked.stream().allMatch(this::hasFolder);
  }

  private boolean hasFolder(Path output) {
    Path folder = output.toAbsolutePath().getParent();
    boolean there = folder != null && Files.isDirectory(folder);
    if (!there) {
      console.complain("cannot write: there is no folder " + folder);
    }
    return there;
  }

  private ParameterException refused(String why) {
    return new ParameterException(spec.commandLine(), why);
  }

  private static boolean isSame(Path one, Path other) {
    if (one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())) {
      return true;
    }
    try {
      return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
    } catch (IOException unknown) {
      return false;
    }
  }
}
