package org.drysill.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drysill.report.evidence.NotAReport;
import org.drysill.verify.Statement;
import org.drysill.verify.Verification;
import org.drysill.verify.Verified;
import org.drysill.yaml.FileTrouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says whether a report agrees with itself. */
@Command(
    name = "verify",
    description = {
      "Says whether a report agrees with itself.",
      "Compared are the files inside with their digests, the figures with what the files give again,"
          + " and the pages with those that are made again.",
      "Exit status 0: all that was compared agrees; 1: something does not."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  drysill verify report.pdf",
      "  drysill verify report.pdf --files home/2026-01-22"
    })
final class VerifyCommand implements Callable<Integer> {
  private static final long MOST_BYTES = 256L * 1024 * 1024;
  private static final int MOST_DETAILS = 20;

  private final Console console;
  @Mixin private final Talk talk = new Talk();

  @Parameters(paramLabel = "<report.pdf>", description = "The report.")
  private Path report;

  @Option(
      names = "--files",
      paramLabel = "<folder>",
      description = {
        "Where files lie that are not inside the report, such as photographs, under the names that",
        "it tells."
      })
  private Path files;

  VerifyCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    try {
      if (!Files.isRegularFile(report)) {
        return refused(Files.isDirectory(report) ? "is a folder" : "is not there");
      }
      if (files != null && !Files.isDirectory(files)) {
        throw new NotDirectoryException(files.toString());
      }
      if (Files.size(report) > MOST_BYTES) {
        return refused("is larger than " + MOST_BYTES / 1024 / 1024 + " MB");
      }
      return told(Verification.of(Files.readAllBytes(report), Optional.ofNullable(files)));
    } catch (NotAReport none) {
      return refused(none.getMessage());
    } catch (IOException failed) {
      console.complain("cannot check: " + FileTrouble.of(failed));
      return ExitStatus.MACHINE_FAILED.code();
    }
  }

  private int refused(String why) {
    console.complain(report + " " + why + ": nothing was compared.");
    return ExitStatus.SURVEY_HAS_PROBLEMS.code();
  }

  private int told(Verified verified) {
    if (!talk.quiet) {
      verified.statements().forEach(this::print);
    }
    boolean agrees = verified.agrees();
    boolean allCompared =
        verified.statements().stream().noneMatch(s -> s.state() == Statement.State.NOT_COMPARED);
    String end = allCompared ? " agrees with itself." : " agrees with itself in what was compared.";
    console.say(console.strong(report + (agrees ? end : " does NOT agree with itself.")));
    return agrees ? ExitStatus.DONE.code() : ExitStatus.SURVEY_HAS_PROBLEMS.code();
  }

  private void print(Statement statement) {
    console.say(
        String.format(
            Locale.ROOT, "%-13s %s", statement.state().word(), shown(statement.sentence())));
    List<String> details = statement.details();
    int most = talk.verbose ? details.size() : MOST_DETAILS;
    details.stream().limit(most).forEach(line -> console.say("              " + shown(line)));
    if (details.size() > most) {
      console.say("              … and " + (details.size() - most) + " more; --verbose tells all");
    }
  }

  /** A report may hold anything; a terminal obeys some characters. */
  private static String shown(String text) {
    return text.codePoints()
        .map(c -> Character.isISOControl(c) ? '?' : c)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
