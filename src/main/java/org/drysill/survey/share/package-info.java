/**
 * Beside step 1 of 6: a survey for a copy that may be shared: without names, addresses, photographs
 * and free words, and with the same figures.
 *
 * <p>In: a survey as it was read, with the earlier one. Out: the same with neutral short names in
 * the place of those that the surveyor chose. Every text that a survey can hold says by an
 * annotation which of the two befalls it; a test holds new keys to that.
 */
package org.drysill.survey.share;
