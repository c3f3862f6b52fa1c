package org.drysill.cli;

import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.report.json.ResultsSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the JSON Schema of surveys or of results. */
@Command(
    name = "schema",
    description = {
      "Prints the JSON Schema of surveys, or of the results.",
      "Editors that know that of surveys help while one types; programs read results by the other."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  drysill schema > survey.schema.json",
      "  drysill schema --results > results.schema.json"
    })
final class SchemaCommand implements Callable<Integer> {
  private final Console console;

  @Option(
      names = "--results",
      description = "The schema of results.json, which report --json writes and each PDF holds.")
  private boolean results;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.say(results ? ResultsSchema.text() : Drysill.schema());
    return ExitStatus.DONE.code();
  }
}
