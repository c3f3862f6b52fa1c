package org.drysill.yaml;

/** The stable code of a sort of problem; each one has its line in the page of problems. */
public interface ProblemCode {
  /** The code as printed, such as {@code Y013}. */
  String code();

  /** What is wrong, in a few words. */
  String meaning();

  /** Whether it stops the work. */
  default Problem.Severity severity() {
    return Problem.Severity.ERROR;
  }
}
