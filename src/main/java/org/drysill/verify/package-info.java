/**
 * Beside step 6: a report that comes back is checked.
 *
 * <p>In: a PDF, of which nothing is believed. Out: statements about it: whether the files inside
 * are those that it names, whether they give its figures again, whether its pages are what they
 * were.
 */
package org.drysill.verify;
