package org.drysill.yaml;

/**
 * Where something stands in a file, counted from 1 as editors do.
 *
 * @param file the file's name as the user gave it
 * @param line the line, from 1
 * @param column the column, from 1
 */
public record Place(String file, int line, int column) {}
