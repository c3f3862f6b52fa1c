/** The fonts of the report: which there are, what characters they have and how wide those are. */
package org.drysill.report.font;
