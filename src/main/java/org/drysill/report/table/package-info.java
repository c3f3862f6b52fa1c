/** Tables of findings and figures: the cells, bars and marks that several chapters share. */
package org.drysill.report.table;
