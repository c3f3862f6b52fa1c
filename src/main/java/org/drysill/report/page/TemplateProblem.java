package org.drysill.report.page;

/**
 * What is wrong with a template of a user's own, with its file and line, in words for its author.
 */
public final class TemplateProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A problem in words. */
  public TemplateProblem(String message) {
    super(message);
  }

  TemplateProblem(String file, int line, String message) {
    this("own template " + file + (line > 0 ? ", line " + line : "") + ": " + message);
  }
}
