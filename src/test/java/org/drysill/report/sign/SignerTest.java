package org.drysill.report.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drysill.report.pdf.Sample;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample document, signed with keys that are thrown away. */
class SignerTest {
  private static final byte[] PDF = Sample.pdf();
  private final Instant now = Instant.now();

  private SigningKey key(byte[] file, String password) throws KeyRefused {
    return SigningKey.read(file, password.toCharArray(), now);
  }

  private byte[] signed(String algorithm) throws Exception {
    return Signer.sign(PDF, key(Keys.file(algorithm, now.minusSeconds(60)), Keys.PASSWORD), now);
  }

  @ParameterizedTest
  @ValueSource(strings = {"RSA", "EC"})
  void a_signed_report_says_who_when_and_that_all_of_it_is_signed(String algorithm)
      throws Exception {
    byte[] signed = signed(algorithm);
    SignatureSeen seen = SignatureSeen.in(signed).orElseThrow();
    assertThat(seen.signer()).contains("CN=R. Example");
    assertThat(seen.at()).isBetween(now.minusSeconds(1), now);
    assertThat(seen.isValid()).isTrue();
    assertThat(seen.coversAll()).isTrue();
    assertThat(seen.wasCertified()).isTrue();
    assertThat(seen.isSelfSigned()).isTrue();
    assertThat(Signer.signedAgain(PDF, seen)).isEqualTo(signed);
    assertThat(SignatureSeen.in(PDF)).isEmpty();
  }

  @Test
  void a_signed_report_breaks_no_rule_of_archive_or_access() throws Exception {
    assertThat(Validator.broken(signed("EC"), "3a", "3u", "ua1")).isEmpty();
  }

  @Test
  void a_changed_byte_makes_the_signature_invalid() throws Exception {
    byte[] signed = signed("EC");
    // A letter of the metadata packet, which is not compressed.
    int at = new String(signed, StandardCharsets.ISO_8859_1).indexOf("<dc:title>") + 60;
    signed[at] ^= 1;
    assertThat(SignatureSeen.in(signed).orElseThrow().isValid()).isFalse();
  }

  @Test
  void what_is_added_after_the_signature_is_not_covered() throws Exception {
    byte[] changed;
    try (PDDocument document = Loader.loadPDF(signed("EC"))) {
      document.getDocumentInformation().setTitle("Another");
      document.getDocumentInformation().getCOSObject().setNeedToBeUpdated(true);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.saveIncremental(out);
      changed = out.toByteArray();
    }
    SignatureSeen seen = SignatureSeen.in(changed).orElseThrow();
    assertThat(seen.isValid()).isTrue();
    assertThat(seen.coversAll()).isFalse();
  }

  @Test
  void a_key_that_cannot_sign_is_refused_with_the_reason() throws Exception {
    byte[] good = Keys.file("EC", now.minusSeconds(60));
    refused(good, "wrong", "cannot be opened with this password");
    refused(new byte[] {1, 2, 3}, Keys.PASSWORD, "is no PKCS#12 file");
    refused(Keys.certificateAlone(), Keys.PASSWORD, "holds no private key");
    refused(Keys.file("EC", now.minus(Duration.ofDays(400))), Keys.PASSWORD, "has expired, on");
    refused(Keys.file("EC", now.plus(Duration.ofDays(2))), Keys.PASSWORD, "is valid from");
  }

  private void refused(byte[] file, String password, String why) {
    assertThatThrownBy(() -> key(file, password))
        .isInstanceOf(KeyRefused.class)
        .hasMessageContaining(why);
  }
}
