package org.drysill.survey.log.read;

import org.drysill.yaml.Problem;

/** A log cannot be used, and why. */
final class LogRefused extends Exception {
  private static final long serialVersionUID = 1;

  private final transient Problem problem;

  LogRefused(Problem problem) {
    super(problem.found(), null, false, false);
    this.problem = problem;
  }

  Problem problem() {
    return problem;
  }
}
