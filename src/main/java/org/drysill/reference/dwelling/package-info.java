/**
 * Beside step 1: what is taken for a home where a survey does not say, each value with its source.
 *
 * <p>In: {@code reference/defaults/dwelling.yaml}. Out: typed defaults. Every use of one becomes an
 * assumption that the report lists.
 */
package org.drysill.reference.dwelling;
