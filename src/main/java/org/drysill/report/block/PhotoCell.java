package org.drysill.report.block;

/**
 * A photograph with its words.
 *
 * @param number its number in the report
 * @param lead the first words under it, printed bold
 * @param caption the other words under it
 * @param alt what it shows, for whoever does not see it
 * @param uri the picture itself, as an address that holds its data
 * @param widthMm its width [mm]
 * @param heightMm its height [mm]
 */
public record PhotoCell(
    String number,
    String lead,
    String caption,
    String alt,
    String uri,
    String widthMm,
    String heightMm) {}
