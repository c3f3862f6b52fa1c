/**
 * Within step 1: whether a survey agrees with itself.
 *
 * <p>In: a filled survey and the places of its keys. Out: what contradicts, refers to nothing or is
 * unlikely, each with its place. Published requirements are no business of these checks.
 */
package org.drysill.survey.check;
