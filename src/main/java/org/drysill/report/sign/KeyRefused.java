package org.drysill.report.sign;

/** A key cannot sign. */
public final class KeyRefused extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal.
   *
   * @param message why, as a clause that goes on from the name of the key file
   */
  KeyRefused(String message) {
    super(message);
  }
}
