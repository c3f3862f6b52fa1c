package org.drysill.options.packs;

/**
 * What the measures of a package make of air and water.
 *
 * @param members the members as bits
 * @param change what they do together
 * @param bill what they cost together
 * @param lacks air that is then lacking, likely [m³/s]: outdoor air of the home, and extract of wet
 *     rooms
 * @param reserve outdoor air of the home by what is asked, likely [1]; infinite where nothing is
 * @param safe true where none needs a safety test first
 * @param size how many members it has
 * @param stopGap true where one of them is a stop-gap
 */
record AirSide(
    long members,
    VapourChange change,
    Bill bill,
    double lacks,
    double reserve,
    boolean safe,
    int size,
    boolean stopGap) {}
