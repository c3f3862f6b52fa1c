/**
 * Within step 1: how the file of a log is read.
 *
 * <p>In: what the survey says of a log, the folder of the survey, the limits of what is believed.
 * Out: an {@link org.drysill.survey.log.Log}. The first part of the file tells how it is written
 * ({@code LayoutFinder}); then the whole file passes once, in a stream: fields become numbers in
 * place ({@code RowScanner}), rows are put in order within a window ({@code SortWindow}), each is
 * judged between its neighbours and holds until the next ({@code HeldReadings}).
 */
package org.drysill.survey.log.read;
