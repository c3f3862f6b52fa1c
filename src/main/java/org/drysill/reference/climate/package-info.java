/** Outdoor climates: the bundled ones by month, and hourly weather files of the user. */
package org.drysill.reference.climate;
