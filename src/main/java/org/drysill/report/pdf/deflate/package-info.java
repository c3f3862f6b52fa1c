/**
 * Deflation that looks for the fewest bits rather than the next good match (RFC 1950, RFC 1951).
 *
 * <p>In: bytes. Out: the same bytes as a zlib stream that every reader understands. Numbers, of
 * which logs and the structure of a document consist, take a seventh to a quarter less than with
 * the deflation of the Java machine. Knows nothing of what the bytes are.
 */
package org.drysill.report.pdf.deflate;
