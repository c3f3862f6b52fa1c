package org.drysill.report.evidence;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest that identifies a file: SHA-256 of FIPS 180-4. */
public final class Sha256 {
  private Sha256() {}

  /** The digest in hexadecimal digits, in lower case. */
  public static String of(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  /** A digest to be filled bit by bit. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
