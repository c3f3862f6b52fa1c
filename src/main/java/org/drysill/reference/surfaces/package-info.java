/**
 * Beside step 1, room-side surfaces: film resistances, limits of humidity, critical temperature
 * factors, typical details.
 *
 * <p>In: {@code reference/surfaces} and {@code reference/defaults/surfaces.yaml}. Out: a {@code
 * SurfaceCatalogue} and {@code SurfaceDefaults}. It may not know any survey.
 */
package org.drysill.reference.surfaces;
