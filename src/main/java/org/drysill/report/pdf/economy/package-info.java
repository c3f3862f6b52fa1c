/**
 * The same document in fewer bytes: what the layout library says too often is said once.
 *
 * <p>In: a painted document that is not saved yet. Out: the same pages to eye, ear and search.
 * Nothing that a page shows or that a screen reader tells is left out.
 */
package org.drysill.report.pdf.economy;
