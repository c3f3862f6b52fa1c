package org.drysill.report.evidence;

/** A file is no report that this program wrote, or one that it will not look into. */
public final class NotAReport extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal.
   *
   * @param message why, as a clause that goes on from the name of the file
   */
  public NotAReport(String message) {
    super(message);
  }
}
