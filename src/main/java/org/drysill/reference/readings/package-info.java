/** What is known beforehand about readings: accuracies, thresholds, criteria for comparing them. */
package org.drysill.reference.readings;
