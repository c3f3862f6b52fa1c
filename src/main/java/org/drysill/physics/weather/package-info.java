/** Hours made from months. */
package org.drysill.physics.weather;
