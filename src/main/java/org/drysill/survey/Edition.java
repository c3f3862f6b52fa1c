package org.drysill.survey;

import org.drysill.yaml.Worded;

/** Which reader the report is for. */
public enum Edition implements Worded {
  /** A surveyor who writes up a visit. */
  SURVEY,
  /** A homeowner who keeps a record of the house. */
  RECORD,
  /** A landlord who files evidence of damp remediation. */
  REMEDIATION,
  /** Someone who wants the results on some ten pages, in a language of theirs. */
  BRIEF
}
