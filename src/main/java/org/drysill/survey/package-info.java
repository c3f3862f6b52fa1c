/**
 * Step 1 of 6: what was SEEN.
 *
 * <p>In: a survey file. Out: an immutable {@link org.drysill.survey.Survey}, or every problem of
 * the file at once. It may not know what is published ({@code reference}); of nature ({@code
 * physics}) it knows value types, and the vapour of air for the rows of logs. It neither judges nor
 * fills in what is missing.
 */
package org.drysill.survey;
