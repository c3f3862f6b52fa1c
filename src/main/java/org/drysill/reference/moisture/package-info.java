/** What gives off water in a home, and how much, by published tables that do not always agree. */
package org.drysill.reference.moisture;
