/**
 * Part of step 2 of 6: what the duct of a fan leaves of its flow, and what a stack draws by warmth.
 *
 * <p>In: a fan with its curve and its duct as seen, stated losses of ducts. Out: {@link
 * org.drysill.assess.ventilation.ducts.FanAtWork}, the flow at which the curve meets the duct, or
 * which facts are missing for it. It may not know what else the home gets, nor what is asked.
 */
package org.drysill.assess.ventilation.ducts;
