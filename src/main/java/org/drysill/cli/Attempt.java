package org.drysill.cli;

import java.io.IOException;
import org.drysill.report.language.LanguageProblem;
import org.drysill.report.page.TemplateProblem;
import org.drysill.report.sign.KeyRefused;
import org.drysill.yaml.FileTrouble;

/**
 * Does the work of a command, and says in one line what a person can mend where it is refused.
 *
 * @param console where that line is printed
 */
record Attempt(Console console) {
  /** Work that a file, a template, a key or the machine can refuse. */
  interface Work {
    /** Does it and gives the exit status. */
    int done() throws IOException, KeyRefused;
  }

  /** The exit status of work that reads and makes. */
  int making(Work work) {
    return attempt("cannot read: ", work);
  }

  /** The exit status of work that writes what was made. */
  int writing(Work work) {
    return attempt("cannot write: ", work);
  }

  private int attempt(String refusal, Work work) {
    try {
      return work.done();
    } catch (TemplateProblem | LanguageProblem wrong) {
      console.complain(wrong.getMessage());
      return ExitStatus.WRONG_USE.code();
    } catch (KeyRefused refused) {
      console.complain("the key " + refused.getMessage() + "; nothing was written");
      return ExitStatus.WRONG_USE.code();
    } catch (IOException refused) {
      console.complain(refusal + FileTrouble.of(refused));
      return ExitStatus.MACHINE_FAILED.code();
    }
  }
}
