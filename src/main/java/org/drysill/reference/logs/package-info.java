/**
 * How logs are read: what is believed of their files, and what of their series counts as decay,
 * balance and event.
 */
package org.drysill.reference.logs;
