package org.drysill.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import org.verapdf.processor.reports.enums.JobEndStatus;

/** A validator of PDF/A and PDF/UA that is not ours. */
public final class Validator {
  private static final Logger LOG = Logger.getLogger("org.verapdf");

  static {
    // It tells of rules broken beside what it logs of them.
    LOG.setLevel(Level.SEVERE);
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Validator() {}

  /**
   * The rules that a file breaks, in words; none where it conforms to all.
   *
   * @param pdf the file
   * @param flavours such as 3a, 3u or ua1; all of them are looked at in one reading of the file
   */
  public static List<String> broken(byte[] pdf, String... flavours)
      throws IOException, InterruptedException {
    // The validator keeps what it reads in variables of its thread: a thread of its own leaves
    // none.
    FutureTask<List<String>> task = new FutureTask<>(reading(pdf, flavours));
    new Thread(task, "validator").start();
    try {
      return task.get();
    } catch (ExecutionException e) {
      throw new IOException("the validator cannot read the file", e);
    }
  }

  private static Callable<List<String>> reading(byte[] pdf, String... flavours) {
    List<PDFAFlavour> asked = Stream.of(flavours).map(PDFAFlavour::fromString).toList();
    return () -> broken(pdf, asked);
  }

  private static List<String> broken(byte[] pdf, List<PDFAFlavour> asked)
      throws ModelParsingException, EncryptedPdfException, ValidationException, IOException {
    List<String> broken = new ArrayList<>();
    List<PDFAFlavour> told = new ArrayList<>();
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), asked.get(0));
        PDFAValidator validator = Foundries.defaultInstance().createValidator(asked)) {
      for (ValidationResult result : validator.validateAll(parser)) {
        told.add(result.getPDFAFlavour());
        broken.addAll(broken(result));
      }
    }
    if (!told.equals(asked)) {
      throw new IOException("asked for " + asked + ", told of " + told);
    }
    return broken;
  }

  private static List<String> broken(ValidationResult result) {
    String flavour = result.getPDFAFlavour().getId();
    if (result.getJobEndStatus() != JobEndStatus.NORMAL || result.getTotalAssertions() == 0) {
      return List.of(flavour + " was not looked at to the end");
    }
    if (result.isCompliant()) {
      return List.of();
    }
    return Stream.concat(
            Stream.of(flavour + " is broken"),
            result.getTestAssertions().stream()
                .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                .map(
                    a ->
                        flavour
                            + " "
                            + a.getRuleId().getClause()
                            + "-"
                            + a.getRuleId().getTestNumber()
                            + ": "
                            + a.getMessage())
                .distinct())
        .toList();
  }
}
