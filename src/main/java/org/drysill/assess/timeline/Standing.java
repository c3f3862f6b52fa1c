package org.drysill.assess.timeline;

import org.drysill.yaml.Worded;

/** How a day stands to a limit of time. */
public enum Standing implements Worded {
  /** On its last day or before. */
  WITHIN,
  /** After its last day. */
  LATER,
  /** A day is missing, or days alone do not tell it. */
  NOT_TOLD
}
