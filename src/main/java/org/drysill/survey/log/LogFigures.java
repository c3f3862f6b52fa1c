package org.drysill.survey.log;

import java.time.Instant;

/**
 * What is true of a whole log, whatever its bins.
 *
 * @param rowsRead rows below the names of the columns, empty lines aside
 * @param rowsUsed rows of which at least one value was used
 * @param first time of the first row that was used
 * @param last time of the last row that was used
 * @param medianStepS median time between neighbouring rows [s], to 1 %; 0 for a single row
 * @param coveredS time for which readings hold [s]
 * @param gapS time between the first and the last row for which none holds [s]
 */
public record LogFigures(
    long rowsRead,
    long rowsUsed,
    Instant first,
    Instant last,
    double medianStepS,
    double coveredS,
    double gapS) {}
