package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** How much a document binds. */
public enum Standing implements Worded {
  /** Binds by itself. */
  LAW,
  /** One way to meet a law. */
  STATUTORY_GUIDANCE,
  /** Agreed by a standards body. */
  STANDARD,
  /** Binds where a place adopts it. */
  MODEL_CODE,
  /** Taken up by choice. */
  VOLUNTARY,
  /** No longer in force; homes were built by it. */
  SUPERSEDED
}
