package org.drysill.report.language;

/** A language was asked for in which an edition is not written. */
public final class LanguageProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A problem in words for the person at the shell.
   *
   * @param message what was asked for and what there is
   */
  public LanguageProblem(String message) {
    super(message);
  }
}
