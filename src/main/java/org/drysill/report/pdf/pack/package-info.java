/**
 * A document as a file of few bytes.
 *
 * <p>In: a document in memory. Out: PDF 1.7 whose objects stand in object streams beside those that
 * they resemble and point to, with a cross-reference stream that tells differences. Knows nothing
 * of what a document is about.
 */
package org.drysill.report.pdf.pack;
