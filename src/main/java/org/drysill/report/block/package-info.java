/**
 * The things on a page: paragraphs, tables, charts, steps, cautions. One macro of the templates
 * prints each kind.
 *
 * <p>In and out: finished words and numbers. Nothing here or in a template computes or judges.
 */
package org.drysill.report.block;
