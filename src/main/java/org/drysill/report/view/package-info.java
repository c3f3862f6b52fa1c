/**
 * Step 4 of 6, the words: results become a view of finished sentences and numbers, in the order
 * that the reader of an edition needs.
 */
package org.drysill.report.view;
