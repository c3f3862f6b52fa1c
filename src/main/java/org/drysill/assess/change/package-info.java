/** What changed in a home from one visit to the next, on equal terms. */
package org.drysill.assess.change;
