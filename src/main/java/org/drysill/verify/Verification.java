package org.drysill.verify;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.Report;
import org.drysill.report.evidence.NotAReport;
import org.drysill.report.evidence.ReportFile;
import org.drysill.report.sign.SignatureSeen;

/**
 * Checks a report: its files against their digests, its figures against what the files give again,
 * its pages against those that are made again.
 */
public final class Verification {
  private Verification() {}

  /**
   * Checks a report.
   *
   * @param pdf its bytes
   * @param folder where files lie that the report was made from and that are not inside; empty
   *     where none are at hand
   * @return what was found
   * @throws NotAReport where there is nothing to check, or the file means harm
   * @throws IOException where the machine fails
   */
  public static Verified of(byte[] pdf, Optional<Path> folder) throws NotAReport, IOException {
    try (ReportFile file = ReportFile.of(pdf)) {
      return of(pdf, file, folder);
    }
  }

  private static Verified of(byte[] pdf, ReportFile file, Optional<Path> folder)
      throws NotAReport, IOException {
    Claim claim = Claim.of(file);
    Sources sources = Sources.of(file, claim, folder);
    Origin origin = Origin.of(claim);
    Digests digests = new Digests(file, claim, sources);
    Optional<SignatureSeen> signature = SignatureSeen.in(pdf);
    List<Statement> said = new ArrayList<>();
    said.add(origin.said());
    signature.map(Signed::said).ifPresent(said::add);
    said.add(digests.files());
    said.add(digests.pages());
    Remade remade = Remade.of(claim, sources);
    remade.said().ifPresent(said::add);
    if (remade.report().isPresent()) {
      Report again = remade.report().get();
      said.add(Figures.compared(claim, again, origin, sources));
      said.add(
          new Pages(pdf, file, Signed.again(again.pdf(), signature)).compared(origin, sources));
    }
    return new Verified(said);
  }
}
