/**
 * Below step 1: the ground that both kinds of YAML stand on, surveys and published data.
 *
 * <p>In: a YAML text and the record type that it should fill. Out: the filled record with the place
 * of every key, or all problems at once, each with file, line and column. It may not know what any
 * key means; records say that themselves with {@link org.drysill.yaml.Key}. The JSON Schema is
 * generated from the same records, so the two cannot drift apart.
 */
package org.drysill.yaml;
