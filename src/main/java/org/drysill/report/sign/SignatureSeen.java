package org.drysill.report.sign;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.drysill.report.evidence.NotAReport;

/** A signature in a report, which may mean harm like all of it. */
public final class SignatureSeen {
  private final PDSignature entry;
  private final byte[] cms;
  private final boolean whole;
  private final Optional<X509Certificate> certificate;
  private final boolean valid;

  private SignatureSeen(PDSignature entry, byte[] pdf) throws IOException {
    this.entry = entry;
    this.cms = entry.getContents(pdf);
    this.whole = coversAllBut(entry.getByteRange(), pdf);
    SignerInformation signer = null;
    X509Certificate signedBy = null;
    try {
      CMSSignedData signed =
          new CMSSignedData(
              new CMSProcessableByteArray(entry.getSignedContent(pdf)),
              new ByteArrayInputStream(cms));
      signer = signed.getSignerInfos().getSigners().iterator().next();
      signedBy = certificate(signed, signer);
    } catch (CMSException | CertificateException broken) {
      // A signature that cannot be read is not valid.
    }
    this.certificate = Optional.ofNullable(signedBy);
    this.valid = signedBy != null && holds(signer, signedBy);
  }

  /**
   * The signature of a report; empty where it has none.
   *
   * @param pdf the bytes of the report
   * @throws NotAReport where there are several, or something that cannot be read
   */
  public static Optional<SignatureSeen> in(byte[] pdf) throws NotAReport {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<PDSignature> all = document.getSignatureDictionaries();
      if (all.size() > 1) {
        throw new NotAReport("has several signatures; only one can be checked");
      }
      return all.isEmpty() ? Optional.empty() : Optional.of(new SignatureSeen(all.get(0), pdf));
    } catch (IOException | RuntimeException | LinkageError broken) {
      // The last: algorithms that no Java offers are left out of the program.
      throw new NotAReport("has a signature that cannot be read");
    }
  }

  private static X509Certificate certificate(CMSSignedData signed, SignerInformation signer)
      throws CertificateException, IOException {
    @SuppressWarnings("unchecked")
    Collection<X509CertificateHolder> found = signed.getCertificates().getMatches(signer.getSID());
    if (found.isEmpty()) {
      throw new CertificateException("none");
    }
    return (X509Certificate)
        CertificateFactory.getInstance("X.509")
            .generateCertificate(new ByteArrayInputStream(found.iterator().next().getEncoded()));
  }

  /** Whether the signature is that of the certificate, over these bytes, and names it. */
  private static boolean holds(SignerInformation signer, X509Certificate certificate) {
    try {
      // Without its validity: whether the certificate was valid then is told apart.
      return names(signer, certificate)
          && signer.verify(
              new JcaSimpleSignerInfoVerifierBuilder().build(certificate.getPublicKey()));
    } catch (CMSException | OperatorCreationException | CertificateException wrong) {
      return false;
    }
  }

  private static boolean names(SignerInformation signer, X509Certificate certificate)
      throws CertificateException {
    Attribute attribute =
        signer.getSignedAttributes().get(PKCSObjectIdentifiers.id_aa_signingCertificateV2);
    if (attribute == null) {
      return false;
    }
    ESSCertIDv2[] named =
        SigningCertificateV2.getInstance(attribute.getAttributeValues()[0]).getCerts();
    return named.length > 0
        && Arrays.equals(named[0].getCertHash(), Certificates.digest(certificate));
  }

  /** True where everything but the signature itself is signed, to the last byte. */
  private static boolean coversAllBut(int[] range, byte[] pdf) {
    return range.length == 4
        && range[0] == 0
        && range[1] > 0
        && range[2] > range[1]
        && range[2] + range[3] == pdf.length
        && pdf[range[1]] == '<'
        && pdf[range[2] - 1] == '>';
  }

  /** Who signs, as the document tells it. */
  public String name() {
    return entry.getName() == null ? "" : entry.getName();
  }

  /** Who signs, as the certificate tells it. */
  public String signer() {
    return certificate.map(c -> c.getSubjectX500Principal().getName()).orElse("nobody known");
  }

  /** When, by the clock of whoever signed. */
  public Instant at() {
    return entry.getSignDate() == null ? Instant.EPOCH : entry.getSignDate().toInstant();
  }

  /** True where the signature is that of its certificate over what it covers. */
  public boolean isValid() {
    return valid;
  }

  /** True where it covers the whole file. */
  public boolean coversAll() {
    return whole;
  }

  /** True where whoever signs vouches for himself alone. */
  public boolean isSelfSigned() {
    return certificate.map(Certificates::isSelfSigned).orElse(false);
  }

  /** True where the certificate was valid when, by that clock, it signed. */
  public boolean wasCertified() {
    return certificate
        .map(
            c ->
                !at().isBefore(c.getNotBefore().toInstant())
                    && !at().isAfter(c.getNotAfter().toInstant()))
        .orElse(false);
  }

  int room() {
    return cms.length;
  }

  byte[] cms() {
    return cms.clone();
  }
}
