package org.drysill.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import org.drysill.Drysill;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.HelpCommand;

/** The program as a shell sees it. */
@Command(
    name = "drysill",
    description = "Turns the survey of a damp home into a printed report.",
    synopsisSubcommandLabel =
        "(report | sheet | check | compare | verify | climates | schema | help)",
    subcommands = {
      ReportCommand.class,
      SheetCommand.class,
      CheckCommand.class,
      CompareCommand.class,
      VerifyCommand.class,
      ClimatesCommand.class,
      SchemaCommand.class,
      HelpCommand.class
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Examples:",
      "  drysill check home/survey.yaml",
      "  drysill report home/survey.yaml -o home/report.pdf --json home/results.json",
      "  drysill compare before.yaml after.yaml",
      "  drysill verify report.pdf",
      "  drysill schema > survey.schema.json",
      "",
      "Exit status: 0 done, 1 the survey has problems, 2 wrong use, 3 the machine failed us."
    })
public final class Main {
  /** Commands that study one home, and end. */
  private static final Set<String> SHORT = Set.of("report", "check", "verify");

  private Main() {}

  /** Runs the program and ends the process with its exit status. */
  // From Java 22 on a console stands there even in a pipe; NO_COLOR switches colour off then.
  @SuppressWarnings("SystemConsoleNull")
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    if (arguments.length > 0 && SHORT.contains(arguments[0])) {
      ShortRun.begin();
    }
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, System.getenv(), System.console() != null, arguments));
  }

  /**
   * Runs a command within this process.
   *
   * @param out what was asked for goes here
   * @param err what went wrong goes here
   * @param environment the environment, for {@code NO_COLOR}
   * @param terminal whether a person looks at it
   * @param arguments the arguments
   * @return the exit status
   */
  public static int run(
      PrintWriter out,
      PrintWriter err,
      Map<String, String> environment,
      boolean terminal,
      String... arguments) {
    Console console = Console.of(out, err, environment, terminal);
    CommandLine line =
        new CommandLine(new Main(), new Commands(console, Secrets.of(environment, terminal)))
            .setOut(out)
            .setErr(err)
            .setColorScheme(
                CommandLine.Help.defaultColorScheme(console.colour() ? Ansi.ON : Ansi.OFF))
            .setExecutionExceptionHandler(
                (broken, command, parsed) -> {
                  failed(console, broken, arguments);
                  return ExitStatus.MACHINE_FAILED.code();
                });
    return arguments.length == 0 ? usage(line) : line.execute(arguments);
  }

  private static int usage(CommandLine line) {
    line.usage(line.getErr());
    return ExitStatus.WRONG_USE.code();
  }

  /** One line for a person; the trace only for who asks for it. */
  private static void failed(Console console, Exception broken, String... arguments) {
    String what =
        broken.getMessage() == null ? broken.getClass().getSimpleName() : broken.getMessage();
    console.complain("drysill " + Drysill.version() + " failed: " + what.replace('\n', ' '));
    if (Arrays.asList(arguments).contains("--stacktrace")) {
      broken.printStackTrace(console.err());
    } else {
      console.complain("Run it again with --stacktrace to see where.");
    }
  }

  /** Makes commands with the console that they print on. */
  private record Commands(Console console, Secrets secrets) implements CommandLine.IFactory {
    @Override
    public <K> K create(Class<K> type) throws Exception {
      if (type == ReportCommand.class) {
        return type.cast(new ReportCommand(console, secrets));
      }
      if (type == SheetCommand.class) {
        return type.cast(new SheetCommand(console));
      }
      if (type == SchemaCommand.class) {
        return type.cast(new SchemaCommand(console));
      }
      if (type == ClimatesCommand.class) {
        return type.cast(new ClimatesCommand(console));
      }
      if (type == VerifyCommand.class) {
        return type.cast(new VerifyCommand(console));
      }
      if (type == CompareCommand.class) {
        return type.cast(new CompareCommand(console, secrets));
      }
      if (type == CheckCommand.class) {
        return type.cast(new CheckCommand(console));
      }
      return CommandLine.defaultFactory().create(type);
    }
  }
}
