package org.drysill.reference.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Vocabularies;

/**
 * The rule sets that are known.
 *
 * @param all every rule set, in the order in which they are compared
 */
public record RuleCatalogue(List<RuleSet> all) {
  /** The vocabulary whose words are the ids of rule sets. */
  public static final String VOCABULARY = "rule set";

  /** Copies the list. */
  public RuleCatalogue {
    all = List.copyOf(all);
  }

  /** The bundled rule sets. */
  public static RuleCatalogue bundled() {
    return new RuleCatalogue(DataFiles.readAll("rules", RuleSet.class));
  }

  /** The rule set of an id. */
  public Optional<RuleSet> find(String id) {
    return all.stream().filter(rules -> rules.id().equals(id)).findFirst();
  }

  /** The same with a user's own rule set first; it replaces one of the same id. */
  public RuleCatalogue with(RuleSet own) {
    Stream<RuleSet> others = all.stream().filter(rules -> !rules.id().equals(own.id()));
    return new RuleCatalogue(Stream.concat(Stream.of(own), others).toList());
  }

  /** The ids, in their order. */
  public List<String> ids() {
    return all.stream().map(RuleSet::id).toList();
  }

  /** The ids as the vocabulary that a survey's {@code jurisdiction} is checked with. */
  public Vocabularies vocabulary() {
    return new Vocabularies(Map.of(VOCABULARY, ids()));
  }
}
