package org.drysill.cli;

import picocli.CommandLine.Option;

/** How much a command says; every command has these. */
final class Talk {
  @Option(names = "--quiet", description = "Print nothing but problems.")
  boolean quiet;

  @Option(names = "--verbose", description = "Print warnings, assumptions and what each step took.")
  boolean verbose;

  @Option(names = "--stacktrace", description = "Where the program itself fails, print the trace.")
  boolean stacktrace;
}
