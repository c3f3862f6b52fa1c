/** How series of a logger are read: what counts as decay, balance and event. */
package org.drysill.reference.logs;
