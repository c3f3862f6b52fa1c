/**
 * Beside step 1, heat recovery: what to take for granted where a survey is silent.
 *
 * <p>In: {@code reference/defaults/recovery.yaml}. Out: {@code RecoveryDefaults}. It may not know
 * any survey.
 */
package org.drysill.reference.recovery;
