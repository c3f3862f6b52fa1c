package org.drysill.cli;

import java.io.PrintWriter;
import java.util.Map;

/**
 * Where a command prints, and how.
 *
 * @param out what was asked for
 * @param err what went wrong
 * @param colour whether words may be coloured
 */
record Console(PrintWriter out, PrintWriter err, boolean colour) {
  private static final String BOLD = "\u001b[1m";
  private static final String PLAIN = "\u001b[0m";

  /** Colour only on a terminal, and never where NO_COLOR says anything. */
  static Console of(
      PrintWriter out, PrintWriter err, Map<String, String> environment, boolean terminal) {
    boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty();
    boolean dumb = environment.getOrDefault("TERM", "").equals("dumb");
    return new Console(out, err, terminal && !refused && !dumb);
  }

  void say(String line) {
    out.println(line);
    out.flush();
  }

  void complain(String line) {
    err.println(line);
    err.flush();
  }

  String strong(String words) {
    return colour ? BOLD + words + PLAIN : words;
  }
}
