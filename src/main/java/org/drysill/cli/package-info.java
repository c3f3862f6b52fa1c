/**
 * Step 6 of 6: the commands.
 *
 * <p>In: the arguments of a command line. Out: what is printed, the files written, the exit status.
 * Nothing is computed here.
 */
package org.drysill.cli;
