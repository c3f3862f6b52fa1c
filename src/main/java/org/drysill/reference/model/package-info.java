/** What is believed of the air and the water of a home before its readings are put together. */
package org.drysill.reference.model;
