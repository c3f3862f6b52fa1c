package org.drysill.report.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.Drysill;
import org.drysill.report.Report;
import org.drysill.report.pdf.Validator;

/**
 * Prints surveys made up from seeds and reads the proofs. Run as a program: {@code MadeUpReports
 * <folder> <first seed> <last seed>}; it ends with status 1 where anything is wrong.
 */
public final class MadeUpReports {
  private MadeUpReports() {}

  /** Prints what is wrong, report by report; the files stay in the folder. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]);
    List<Integer> seeds =
        IntStream.rangeClosed(Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]))
            .boxed()
            .toList();
    int wrong = 0;
    List<Path> files = new ArrayList<>();
    for (int seed : seeds) {
      Report report = made(MadeUpSurvey.write(folder, seed));
      Path file = folder.resolve("home-" + seed + ".pdf");
      files.add(Files.write(file, report.pdf()));
      List<String> faults = ProofReader.faults(report);
      System.out.println(file + ": " + faults.size());
      faults.stream().limit(12).forEach(f -> System.out.println("  " + f));
      wrong += faults.size();
    }
    for (String flavour : List.of("3a", "ua1")) {
      String said = Validator.verdict(flavour, files.toArray(Path[]::new));
      long passed = files.stream().filter(f -> said.contains("PASS " + f)).count();
      System.out.println(flavour + ": " + passed + " of " + files.size() + " conform");
      wrong += files.size() - (int) passed;
    }
    System.exit(wrong == 0 ? 0 : 1);
  }

  static Report made(Path survey) {
    Drysill.Made made = Drysill.report(survey);
    return made.report()
        .orElseThrow(() -> new AssertionError(survey + " is not made: " + made.problems()));
  }
}
