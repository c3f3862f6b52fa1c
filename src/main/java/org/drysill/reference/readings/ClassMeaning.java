package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * What a humidity class is typical of.
 *
 * @param number 1 to 5
 * @param meaning in words
 * @param source where it is printed; editions differ
 */
public record ClassMeaning(
    @Key(about = "The class, 1 to 5", min = 1, max = 5) int number,
    @Key(about = "What it is typical of") String meaning,
    @Key(about = "Where it is printed") Citation source) {}
