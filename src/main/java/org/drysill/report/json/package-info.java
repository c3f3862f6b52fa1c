/**
 * Part of step 4: the results as JSON, for other programs.
 *
 * <p>In: the records that assessment and options return. Out: the same, key by key: a record is an
 * object whose keys are its components in snake case, a figure is a range whose key carries the
 * unit, what the survey names is called by the survey's own id. Nothing is chosen or reworded here,
 * so the file cannot drift from what was computed.
 */
package org.drysill.report.json;
