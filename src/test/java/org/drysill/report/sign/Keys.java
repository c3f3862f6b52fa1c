package org.drysill.report.sign;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Keys that are thrown away. */
public final class Keys {
  /** The password of all of them. */
  public static final String PASSWORD = "correct horse";

  private Keys() {}

  /** A self-signed key of a kind, valid for a year from a moment. */
  public static byte[] file(String algorithm, Instant from) throws Exception {
    KeyPairGenerator generator = KeyPairGenerator.getInstance(algorithm);
    generator.initialize(algorithm.equals("EC") ? 256 : 2048);
    KeyPair pair = generator.generateKeyPair();
    KeyStore store = empty();
    store.setKeyEntry(
        "me",
        pair.getPrivate(),
        PASSWORD.toCharArray(),
        new Certificate[] {certificate(pair, algorithm, from)});
    return written(store);
  }

  /** A file with a certificate alone. */
  public static byte[] certificateAlone() throws Exception {
    KeyPair pair = KeyPairGenerator.getInstance("EC").generateKeyPair();
    KeyStore store = empty();
    store.setCertificateEntry("someone", certificate(pair, "EC", Instant.now()));
    return written(store);
  }

  private static KeyStore empty() throws Exception {
    KeyStore store = KeyStore.getInstance("PKCS12");
    store.load(null, null);
    return store;
  }

  private static byte[] written(KeyStore store) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    store.store(out, PASSWORD.toCharArray());
    return out.toByteArray();
  }

  private static X509Certificate certificate(KeyPair pair, String algorithm, Instant from)
      throws Exception {
    X500Principal name = new X500Principal("CN=R. Example, O=Example Surveys");
    return new JcaX509CertificateConverter()
        .getCertificate(
            new JcaX509v3CertificateBuilder(
                    name,
                    BigInteger.ONE,
                    Date.from(from),
                    Date.from(from.plus(Duration.ofDays(365))),
                    name,
                    pair.getPublic())
                .build(
                    new JcaContentSignerBuilder(
                            algorithm.equals("EC") ? "SHA256withECDSA" : "SHA256withRSA")
                        .build(pair.getPrivate())));
  }
}
