package org.drysill.options;

/**
 * A measure that is not among the ranked ones.
 *
 * @param measure its id
 * @param title its title
 * @param because the reason, to stand after "not here, because"
 */
public record NotHere(String measure, String title, String because) {}
