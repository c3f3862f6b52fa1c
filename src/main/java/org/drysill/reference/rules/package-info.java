/**
 * Beside step 1: what published rule sets ask of the ventilation of a home.
 *
 * <p>In: one data file for each rule set. Out: {@link org.drysill.reference.rules.RuleSet}s, each
 * value with its document and clause. It computes no rate; {@code assess.ventilation} does.
 */
package org.drysill.reference.rules;
