package org.drysill.cli;

import java.util.concurrent.Callable;
import org.drysill.Drysill;
import picocli.CommandLine.Command;

/** Prints the JSON Schema of surveys. */
@Command(
    name = "schema",
    description = "Prints the JSON Schema of survey files, for editors that help while one types.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  drysill schema > survey.schema.json"})
final class SchemaCommand implements Callable<Integer> {
  private final Console console;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.say(Drysill.schema());
    return ExitStatus.DONE.code();
  }
}
