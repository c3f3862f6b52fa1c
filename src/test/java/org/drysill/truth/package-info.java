/** Made-up rooms whose truth is known, and what loggers make of them. */
package org.drysill.truth;
