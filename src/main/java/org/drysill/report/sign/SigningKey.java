package org.drysill.report.sign;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.CertificateExpiredException;
import java.security.cert.CertificateNotYetValidException;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Date;
import java.util.List;

/**
 * A private key with its certificates, of a PKCS#12 file.
 *
 * @param key the key
 * @param chain its certificate first, then those of whoever vouches for it
 */
public record SigningKey(PrivateKey key, List<X509Certificate> chain) {
  private static final int DIGITAL_SIGNATURE = 0;
  private static final int NON_REPUDIATION = 1;

  /** Copies the list. */
  public SigningKey {
    chain = List.copyOf(chain);
  }

  /**
   * Reads a key file.
   *
   * @param file the bytes of a PKCS#12 file
   * @param password its password
   * @param now when it is to sign
   * @throws KeyRefused where the password is wrong, the file holds no key or several, or the key
   *     may not sign now
   */
  public static SigningKey read(byte[] file, char[] password, Instant now) throws KeyRefused {
    try {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(new ByteArrayInputStream(file), password);
      List<String> names = new ArrayList<>();
      for (String name : Collections.list(store.aliases())) {
        if (store.isKeyEntry(name)) {
          names.add(name);
        }
      }
      if (names.size() != 1) {
        throw new KeyRefused(
            names.isEmpty() ? "holds no private key" : "holds several private keys; give it one");
      }
      return usable(of(store, names.get(0), password), now);
    } catch (UnrecoverableKeyException wrong) {
      throw new KeyRefused("cannot be opened with this password");
    } catch (IOException broken) {
      throw new KeyRefused(
          broken.getCause() instanceof UnrecoverableKeyException
              ? "cannot be opened with this password"
              : "is no PKCS#12 file");
    } catch (GeneralSecurityException odd) {
      throw new KeyRefused("cannot be read: " + odd.getMessage());
    }
  }

  private static SigningKey of(KeyStore store, String name, char[] password)
      throws GeneralSecurityException, KeyRefused {
    Certificate[] chain = store.getCertificateChain(name);
    if (chain == null || !Arrays.stream(chain).allMatch(X509Certificate.class::isInstance)) {
      throw new KeyRefused("holds no certificate for its key");
    }
    if (!(store.getKey(name, password) instanceof PrivateKey key)) {
      throw new KeyRefused("holds no private key");
    }
    return new SigningKey(key, Arrays.stream(chain).map(X509Certificate.class::cast).toList());
  }

  private static SigningKey usable(SigningKey key, Instant now) throws KeyRefused {
    X509Certificate own = key.own();
    try {
      own.checkValidity(Date.from(now));
    } catch (CertificateExpiredException late) {
      throw new KeyRefused("has expired, on " + day(own.getNotAfter()));
    } catch (CertificateNotYetValidException early) {
      throw new KeyRefused("is valid from " + day(own.getNotBefore()) + " only");
    }
    boolean[] usage = own.getKeyUsage();
    if (usage != null && !usage[DIGITAL_SIGNATURE] && !usage[NON_REPUDIATION]) {
      throw new KeyRefused("holds a certificate that is not for signing");
    }
    key.algorithm();
    return key;
  }

  private static LocalDate day(Date date) {
    return LocalDate.ofInstant(date.toInstant(), ZoneOffset.UTC);
  }

  /** The certificate of the key itself. */
  X509Certificate own() {
    return chain.get(0);
  }

  /** The algorithm that it signs with. */
  String algorithm() throws KeyRefused {
    return switch (key.getAlgorithm()) {
      case "RSA" -> "SHA256withRSA";
      case "EC" -> "SHA256withECDSA";
      default ->
          throw new KeyRefused("holds a key for " + key.getAlgorithm() + "; RSA and EC can sign");
    };
  }
}
