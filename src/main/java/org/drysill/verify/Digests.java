package org.drysill.verify;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.drysill.report.evidence.NotAReport;
import org.drysill.report.evidence.ReportFile;
import org.drysill.report.evidence.Sha256;

/** Holds the files against the digests that the results and the pages tell. */
final class Digests {
  private static final Pattern SPACES = Pattern.compile("[\\s\u00a0]+");

  private final ReportFile file;
  private final Claim claim;
  private final Sources sources;
  private final List<String> wrong = new ArrayList<>();

  /**
   * A comparison.
   *
   * @param file the report
   * @param claim what it says of itself
   * @param sources its files
   */
  Digests(ReportFile file, Claim claim, Sources sources) {
    this.file = file;
    this.claim = claim;
    this.sources = sources;
  }

  Statement files() {
    for (Claim.Input input : claim.inputs()) {
      byte[] content = sources.files().get(input.name());
      if (content == null && input.inside()) {
        wrong.add(input.name() + ": the results name it, but it is not inside");
      } else if (content != null && !Sha256.of(content).equals(input.sha256())) {
        wrong.add(
            input.name()
                + ": its digest is "
                + Sha256.of(content)
                + ", the results tell "
                + input.sha256());
      }
    }
    for (String name : file.files().keySet()) {
      if (!name.equals(claim.nameOfResults())
          && claim.inputs().stream().noneMatch(i -> i.name().equals(name))) {
        wrong.add(name + ": it is inside, but the results do not name it");
      }
    }
    return said(
        "The files inside have the digests that the results tell.",
        "The files inside are not those that the results tell of.");
  }

  /** The pages print a digest of the data, of each file and of the results. */
  Statement pages() throws NotAReport {
    Map<String, String> expected = new LinkedHashMap<>();
    expected.put("the data of the program", claim.data());
    claim.inputs().forEach(input -> expected.put(input.name(), input.sha256()));
    String results = claim.nameOfResults();
    expected.put(results, Sha256.of(file.files().get(results)));
    // They stand near the end, and to read all pages takes long.
    StringBuilder printed = new StringBuilder();
    for (int page = file.pages(); page > 0 && !areIn(printed, expected.values()); page--) {
      printed.insert(0, SPACES.matcher(file.words(page)).replaceAll(""));
    }
    wrong.clear();
    expected.forEach(
        (name, sha256) -> {
          if (!areIn(printed, List.of(sha256))) {
            wrong.add(name + ": the pages do not print " + sha256);
          }
        });
    return said(
        "The pages print the digests of the files inside.",
        "The pages do not print the digests of the files inside.");
  }

  private static boolean areIn(StringBuilder printed, Collection<String> digests) {
    return digests.stream().allMatch(digest -> printed.indexOf("SHA-256" + digest) >= 0);
  }

  private Statement said(String agrees, String differs) {
    return wrong.isEmpty() ? Statement.agrees(agrees) : Statement.differs(differs, wrong);
  }
}
