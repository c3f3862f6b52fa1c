package org.drysill.verify;

import org.drysill.Drysill;

/**
 * Whether the program that made a report is the one that checks it.
 *
 * @param same whether version and data are the same
 * @param said that in words
 */
record Origin(boolean same, Statement said) {
  static Origin of(Claim claim) {
    boolean version = claim.version().equals(Drysill.version());
    boolean data = claim.data().equals(Drysill.dataDigest());
    String made = "Made by Drysill " + claim.version() + ", data " + claim.data();
    if (version && data) {
      return new Origin(
          true, Statement.told(made + ": this is the same version with the same data."));
    }
    String here =
        version
            ? "this is the same version with other data, " + Drysill.dataDigest()
            : "this is version "
                + Drysill.version()
                + (data ? " with the same data" : " with other data, " + Drysill.dataDigest());
    return new Origin(
        false, Statement.told(made + ": " + here + ". Figures may differ for that reason."));
  }
}
