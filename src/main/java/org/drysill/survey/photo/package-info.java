/**
 * Beside step 1 of 6: photographs as a report can print them.
 *
 * <p>In: the bytes of the files that a survey names. Out: small pictures, upright and without
 * anything but their colours; or what is wrong with a file. Where they are printed is not known
 * here, only how large at most.
 */
package org.drysill.survey.photo;
