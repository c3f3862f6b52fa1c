package org.drysill.report.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.Drysill;
import org.drysill.report.Report;
import org.drysill.report.json.ResultsShape;
import org.drysill.report.pdf.Validator;

/**
 * Prints surveys made up from seeds and reads the proofs. Run as a program: {@code MadeUpReports
 * <folder> 0-49}, or single seeds such as {@code 3 17}; it ends with status 1 where anything is
 * wrong.
 */
public final class MadeUpReports {
  private MadeUpReports() {}

  /** Prints what is wrong, report by report; the files stay in the folder. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]);
    List<Integer> seeds =
        Arrays.stream(arguments).skip(1).flatMapToInt(MadeUpReports::seeds).boxed().toList();
    int wrong = 0;
    for (int seed : seeds) {
      Report report = made(MadeUpSurvey.write(folder, seed));
      Path file = folder.resolve("home-" + seed + ".pdf");
      Files.write(file, report.pdf());
      List<String> faults = new ArrayList<>(ProofReader.faults(report));
      faults.addAll(ResultsShape.faults(report.json()));
      faults.addAll(Validator.broken(report.pdf(), "3a", "ua1"));
      System.out.println(file + ": " + faults.size());
      faults.stream().limit(12).forEach(f -> System.out.println("  " + f));
      wrong += faults.size();
    }
    System.exit(wrong == 0 ? 0 : 1);
  }

  private static IntStream seeds(String words) {
    String[] ends = words.split("-", 2);
    return IntStream.rangeClosed(
        Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]));
  }

  static Report made(Path survey) {
    Drysill.Made made = Drysill.report(survey);
    return made.report()
        .orElseThrow(() -> new AssertionError(survey + " is not made: " + made.problems()));
  }
}
