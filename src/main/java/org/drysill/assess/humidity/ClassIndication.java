package org.drysill.assess.humidity;

import org.drysill.reference.Citation;

/**
 * The internal humidity class that an excess would have if it were a monthly mean. One reading is
 * not a monthly mean, so this is an indication and no more.
 *
 * @param lowest the lowest class that the excess may belong to, 1 to 5
 * @param likely the class of the likely excess
 * @param highest the highest class that the excess may belong to
 * @param meaning whom the class of the likely excess is typical of, in words
 * @param source the table of classes, with its edition: editions rank dwellings differently
 */
public record ClassIndication(
    int lowest, int likely, int highest, String meaning, Citation source) {}
