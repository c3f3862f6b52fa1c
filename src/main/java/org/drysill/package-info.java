/**
 * The door: the pipeline in one short method, for the commands and for other programs.
 *
 * <p>In: the path of a survey. Out: what was found, or every problem of the file.
 */
package org.drysill;
