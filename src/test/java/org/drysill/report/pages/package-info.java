/**
 * Printed reports looked at as a proof-reader does: where each letter stands, what is cut, what
 * overlaps, which page is nearly empty, which reference leads nowhere. And surveys made up from
 * seeds to be printed.
 */
package org.drysill.report.pages;
