package org.drysill.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.yaml.FileTrouble;

/**
 * Where a password comes from: never from the command line, which others on the machine can read.
 *
 * @param environment the environment
 * @param prompt asks the person at the terminal; empty where nobody is there
 */
record Secrets(Map<String, String> environment, Optional<Function<String, char[]>> prompt) {
  // From Java 22 on a console stands there even in a pipe; then nobody answers.
  @SuppressWarnings("SystemConsoleNull")
  static Secrets of(Map<String, String> environment, boolean terminal) {
    return new Secrets(
        environment,
        terminal && System.console() != null
            ? Optional.of(question -> System.console().readPassword("%s", question))
            : Optional.empty());
  }

  /** The first line of a file. */
  static char[] inFile(Path file) throws IOException {
    try {
      return Files.readString(file, StandardCharsets.UTF_8)
          .lines()
          .findFirst()
          .orElse("")
          .toCharArray();
    } catch (IOException closed) {
      throw FileTrouble.about(file, closed);
    }
  }

  /** The value of a variable; empty where it is not set. */
  Optional<char[]> inVariable(String name) {
    return Optional.ofNullable(environment.get(name)).map(String::toCharArray);
  }

  /** What a person answers; empty where nobody does. */
  Optional<char[]> asked(String question) {
    return prompt.map(ask -> ask.apply(question));
  }
}
