package org.drysill.survey;

import org.drysill.yaml.Worded;

/** How much wind the home gets. */
public enum Shelter implements Worded {
  /** Open ground, coast, high up. */
  EXPOSED,
  /** Among other houses. */
  NORMAL,
  /** Behind higher buildings or trees. */
  SHELTERED
}
