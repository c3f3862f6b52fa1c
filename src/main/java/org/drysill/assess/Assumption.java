package org.drysill.assess;

import org.drysill.reference.Citation;

/**
 * Something taken for granted because the survey does not say it.
 *
 * @param id stable id, such as {@code dwelling.airtightness}; one entry per id in the report
 * @param about what it is about
 * @param assumed what was taken, with its unit
 * @param why why this value
 * @param better the reading or fact that would replace it, as an instruction
 * @param source where the value comes from
 */
public record Assumption(
    String id, String about, String assumed, String why, String better, Citation source) {}
