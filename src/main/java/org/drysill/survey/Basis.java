package org.drysill.survey;

import org.drysill.yaml.Worded;

/** How a stated building fact is known. */
public enum Basis implements Worded {
  /** By a test. */
  MEASURED,
  /** By judgement. */
  ASSUMED
}
