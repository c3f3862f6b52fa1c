package org.drysill.report.block;

/**
 * A name and its value.
 *
 * @param name what it is
 * @param value its value in words
 */
public record Fact(String name, String value) {}
