/**
 * Beside step 1: the cautions that a report must print, as data with their sources.
 *
 * <p>In: the files under {@code reference/cautions}. Out: cautions, each with the facts that call
 * for it.
 */
package org.drysill.reference.cautions;
