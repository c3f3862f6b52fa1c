package org.drysill.survey;

import org.drysill.yaml.Worded;

/** How often water was seen on a window. */
public enum CondensationSeen implements Worded {
  /** Never. */
  NEVER,
  /** On some cold mornings. */
  SOMETIMES,
  /** On most winter mornings. */
  DAILY,
  /** So much that it runs off. */
  STREAMING
}
