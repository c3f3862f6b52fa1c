package org.drysill.report.violations;

import picocli.CommandLine;

/**
 * Classes of {@code report} that break the rules of the house, so that a test can see them told.
 */
public final class Pages {
  private Pages() {}

  /** Parses arguments by itself. */
  public record ParsesArguments(CommandLine commandLine) {}
}
