package org.drysill.survey;

import org.drysill.yaml.Worded;

/** Which reader the report is for. */
public enum Edition implements Worded {
  /** A surveyor who writes up a visit. */
  SURVEY,
  /** A homeowner who keeps a record of the house. */
  RECORD,
  /** A landlord who files evidence of damp remediation. */
  REMEDIATION
}
