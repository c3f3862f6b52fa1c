package org.drysill.cli;

/** How a command ended, as the shell sees it. */
enum ExitStatus {
  /** What was asked for was done. */
  DONE(0),
  /** The survey has problems; nothing was written. */
  SURVEY_HAS_PROBLEMS(1),
  /** The command was used wrongly. */
  WRONG_USE(2),
  /** The machine failed us: disk, permission, a defect of the program. */
  MACHINE_FAILED(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
