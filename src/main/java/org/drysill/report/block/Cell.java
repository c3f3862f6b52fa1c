package org.drysill.report.block;

import java.util.Optional;

/**
 * A cell of a table.
 *
 * @param text its words; may be empty
 * @param small more words in small grey type; may be empty
 * @param mark the mark of a verdict: {@code meets}, {@code short}, {@code unknown} or empty
 * @param bar a bar with its range and requirement
 */
public record Cell(String text, String small, String mark, Optional<Bar> bar) {}
