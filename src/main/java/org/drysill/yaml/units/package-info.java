/**
 * Below step 1: quantities as the trade writes them.
 *
 * <p>In: a text such as {@code 54 m3/h}, {@code 8..12 /h} or {@code 20.0 C ± 0.5 K} and the kind of
 * quantity that it should be. Out: numbers in the unit in which that kind is kept, or what is wrong
 * with the text. Units are converted here and nowhere else.
 */
package org.drysill.yaml.units;
