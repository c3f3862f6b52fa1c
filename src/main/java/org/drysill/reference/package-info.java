/**
 * Beside step 1: what is PUBLISHED.
 *
 * <p>In: the data files under {@code src/main/resources/reference}. Out: typed views of them, each
 * value with its source. It may not know any survey, and it computes nothing.
 */
package org.drysill.reference;
