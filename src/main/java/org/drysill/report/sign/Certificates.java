package org.drysill.report.sign;

import java.security.GeneralSecurityException;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import org.drysill.report.evidence.Sha256;

/** What a certificate tells. */
final class Certificates {
  private Certificates() {}

  static byte[] digest(X509Certificate certificate) throws CertificateEncodingException {
    return Sha256.digest().digest(certificate.getEncoded());
  }

  static int length(X509Certificate certificate) throws KeyRefused {
    try {
      return certificate.getEncoded().length;
    } catch (CertificateEncodingException odd) {
      throw new KeyRefused("holds a certificate that cannot be written");
    }
  }

  /** True where whom it names vouches for himself alone. */
  static boolean isSelfSigned(X509Certificate certificate) {
    if (!certificate.getSubjectX500Principal().equals(certificate.getIssuerX500Principal())) {
      return false;
    }
    try {
      certificate.verify(certificate.getPublicKey());
      return true;
    } catch (GeneralSecurityException another) {
      return false;
    }
  }
}
