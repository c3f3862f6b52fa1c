/**
 * The page text: templates filled with finished words and numbers, the check of the characters that
 * the fonts lack, and the page as one HTML file.
 */
package org.drysill.report.page;
