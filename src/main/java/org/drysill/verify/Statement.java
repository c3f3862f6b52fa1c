package org.drysill.verify;

import java.util.List;

/**
 * One thing that was found about a report.
 *
 * @param state whether it agrees
 * @param sentence the finding
 * @param details what it is about, one line each
 */
public record Statement(State state, String sentence, List<String> details) {
  /** Copies the list. */
  public Statement {
    details = List.copyOf(details);
  }

  /** Whether a report agrees with itself in one respect. */
  public enum State {
    /** It does. */
    AGREES("agrees"),
    /** It does not. */
    DIFFERS("DIFFERS"),
    /** That was not compared, for a reason. */
    NOT_COMPARED("not compared"),
    /** Nothing is compared: a fact to read the others by. */
    TOLD("note");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** How it is printed. */
    public String word() {
      return word;
    }
  }

  static Statement agrees(String sentence) {
    return new Statement(State.AGREES, sentence, List.of());
  }

  static Statement differs(String sentence, List<String> details) {
    return new Statement(State.DIFFERS, sentence, details);
  }

  static Statement notCompared(String sentence) {
    return new Statement(State.NOT_COMPARED, sentence, List.of());
  }

  static Statement told(String sentence) {
    return new Statement(State.TOLD, sentence, List.of());
  }
}
