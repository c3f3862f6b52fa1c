/**
 * A part of step 2 that stands after humidity, moisture and surfaces: what the readings of all
 * rooms tell together. The home as zones that exchange air and water; infiltration, fans, doors and
 * production fitted to the readings within what was believed of them.
 */
package org.drysill.assess.model;
