package org.drysill.report.block;

/**
 * An entry of a list that is looked up.
 *
 * @param lead its first words, printed bold; empty where the text heads what follows
 * @param text the rest; may be empty
 * @param quiet more in grey; may be empty
 */
public record Entry(String lead, String text, String quiet) {}
