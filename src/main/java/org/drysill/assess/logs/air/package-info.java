/**
 * Step 3 of 6, the air behind the logs: how much of it a room gets by decays of CO₂ and vapour,
 * what gave off water and when, and the production that a mean excess implies.
 *
 * <p>In: the traces of logged rooms, and what ventilation and the list of sources say. Out:
 * figures, each beside what was believed, and events by kind. It may not know of surfaces.
 */
package org.drysill.assess.logs.air;
