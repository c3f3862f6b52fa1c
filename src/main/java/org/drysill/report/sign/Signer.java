package org.drysill.report.sign;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.ExternalSigningSupport;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.drysill.report.evidence.Sha256;

/** Signs reports. */
public final class Signer {
  /** Beside the certificates a signature has the digest, the attributes and the signature value. */
  private static final int BESIDE_CERTIFICATES = 3072;

  private Signer() {}

  /**
   * Signs a report.
   *
   * @param pdf the report as it was made
   * @param key the key of whoever answers for it
   * @param at when it is signed
   * @return the signed report
   * @throws KeyRefused where the key fails to sign
   */
  public static byte[] sign(byte[] pdf, SigningKey key, Instant at) throws IOException, KeyRefused {
    int room = BESIDE_CERTIFICATES;
    for (X509Certificate certificate : key.chain()) {
      room += Certificates.length(certificate);
    }
    String name = key.own().getSubjectX500Principal().getName();
    Entry entry = new Entry(name, at.truncatedTo(ChronoUnit.SECONDS), room);
    return entered(Signable.of(pdf), entry, content -> Cms.detached(content, key));
  }

  /**
   * A report with a signature that there is already, to see whether a signed report is that report
   * and nothing more.
   *
   * @param pdf the report as it was made
   * @param signature the signature of the signed one
   */
  public static byte[] signedAgain(byte[] pdf, SignatureSeen signature)
      throws IOException, KeyRefused {
    Entry entry = new Entry(signature.name(), signature.at(), signature.room());
    return entered(Signable.of(pdf), entry, content -> signature.cms());
  }

  /**
   * What a signature says in the document.
   *
   * @param name who signs
   * @param at when
   * @param room the bytes that are kept for the signature
   */
  private record Entry(String name, Instant at, int room) {}

  private interface Signature {
    byte[] of(byte[] content) throws KeyRefused;
  }

  private static byte[] entered(byte[] signable, Entry entry, Signature signature)
      throws IOException, KeyRefused {
    try (PDDocument document = Loader.loadPDF(signable);
        SignatureOptions options = new SignatureOptions()) {
      document.setDocumentId(Long.parseLong(Sha256.of(signable).substring(0, 12), 16));
      PDSignature sign = new PDSignature();
      sign.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
      sign.setSubFilter(PDSignature.SUBFILTER_ETSI_CADES_DETACHED);
      sign.setName(entry.name());
      sign.setSignDate(moment(entry.at()));
      PDSignatureField field = document.getSignatureFields().get(0);
      field.getCOSObject().setItem(COSName.V, sign);
      field.getCOSObject().setNeedToBeUpdated(true);
      options.setPreferredSignatureSize(entry.room());
      document.addSignature(sign, options);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ExternalSigningSupport signing = document.saveIncrementalForExternalSigning(out);
      try (InputStream content = signing.getContent()) {
        signing.setSignature(signature.of(content.readAllBytes()));
      }
      return out.toByteArray();
    }
  }

  private static Calendar moment(Instant at) {
    Calendar moment = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    moment.setTimeInMillis(at.toEpochMilli());
    return moment;
  }
}
