/**
 * Part of step 4: photographs, each with a number, its place and a caption.
 *
 * <p>In: pictures that are ready for print, and where the survey names them. Out: the chapter that
 * prints them, and the numbers by which rooms and findings point to it.
 */
package org.drysill.report.photo;
