/**
 * What stands behind the findings: method in plain words, workings, assumptions, readings that
 * would help, sources, the survey as it was read, provenance, signatures.
 */
package org.drysill.report.appendix;
