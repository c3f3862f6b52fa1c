package org.drysill.survey.log;

/**
 * What a log holds.
 *
 * @param series its air by bins of time
 * @param figures what is true of the whole log, whatever the bins
 * @param layout how the file was taken to be written
 * @param quality what is odd about it
 */
public record LogContent(
    LoggedSeries series, LogFigures figures, LogLayout layout, LogQuality quality) {}
