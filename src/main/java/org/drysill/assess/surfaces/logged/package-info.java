/**
 * Step 3 of 6, cold surfaces over a log: for how long each was moist or wet while a logger stood in
 * its room. In: the places with their temperature factors, and the logs beside the outdoor air of
 * the same time. It may not know of a year that was not logged.
 */
package org.drysill.assess.surfaces.logged;
