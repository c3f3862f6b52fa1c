/**
 * Part of step 4: what a report brings along so that it can be checked: the files it was made from
 * and their digests.
 */
package org.drysill.report.evidence;
