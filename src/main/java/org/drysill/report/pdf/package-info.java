/**
 * The printed document: XHTML and charts become a tagged PDF/A-3a and PDF/UA-1 file.
 *
 * <p>The same input gives the same bytes, on any day, in any time zone and under any locale.
 * Nothing outside the given text is read: no file, no address.
 */
package org.drysill.report.pdf;
