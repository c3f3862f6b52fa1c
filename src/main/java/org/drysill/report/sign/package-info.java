/**
 * Part of step 4: a report is signed with its maker's own key, and a signature is checked.
 *
 * <p>In: the bytes of a report and a key. Out: the same report with a signature after the manner of
 * PAdES (ETSI EN 319 142-1, baseline level B-B), still a PDF/A-3a and PDF/UA-1 file. The time of
 * signing, and with most keys the signature itself, are what does not repeat.
 */
package org.drysill.report.sign;
