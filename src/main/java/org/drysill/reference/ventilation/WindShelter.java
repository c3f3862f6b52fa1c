package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** How much wind a home gets. */
public enum WindShelter implements Worded {
  /** Open ground. */
  EXPOSED,
  /** Among other houses. */
  NORMAL,
  /** Behind higher buildings or trees. */
  SHELTERED
}
