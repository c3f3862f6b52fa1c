package org.drysill.verify;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.drysill.report.sign.KeyRefused;
import org.drysill.report.sign.SignatureSeen;
import org.drysill.report.sign.Signer;

/** What a signature tells of a report, and what it does not. */
final class Signed {
  private Signed() {}

  static Statement said(SignatureSeen signature) {
    String by = "Signed by " + signature.signer() + ", by the signer's clock at " + signature.at();
    if (!signature.isValid()) {
      return Statement.differs(
          "The signature is not valid: what it covers was changed, or it was.", List.of(by));
    }
    if (!signature.coversAll()) {
      return Statement.differs(
          "The signature does not cover the whole file: something was added after it.",
          List.of(by));
    }
    if (!signature.wasCertified()) {
      return Statement.differs(
          "The signature was made when its certificate was not valid.", List.of(by));
    }
    return Statement.agrees(
        by
            + ": the signature is valid and covers the whole file. "
            + (signature.isSelfSigned()
                ? "The certificate is self-signed: it tells that one key signed, not whose it is."
                : "Whether those who issued the certificate can be trusted was not checked."));
  }

  /** A report that was made again, with the signature of the one that is checked. */
  static byte[] again(byte[] pdf, Optional<SignatureSeen> signature) throws IOException {
    try {
      return signature.isPresent() ? Signer.signedAgain(pdf, signature.get()) : pdf;
    } catch (KeyRefused impossible) {
      throw new IOException("a signature cannot be put in its place again", impossible);
    }
  }
}
