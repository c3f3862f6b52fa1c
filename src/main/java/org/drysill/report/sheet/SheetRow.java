package org.drysill.report.sheet;

/**
 * A row of how things stand.
 *
 * @param what what was looked at
 * @param found what was found
 * @param mark the mark of the verdict: {@code meets}, {@code short}, {@code unknown}, or empty
 * @param verdict its word; empty where there is none
 */
public record SheetRow(String what, String found, String mark, String verdict) {}
