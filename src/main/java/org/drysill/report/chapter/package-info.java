/**
 * The chapters of the report. Each turns one result into a section whose heading is a sentence, or
 * into nothing where there is nothing to say.
 */
package org.drysill.report.chapter;
