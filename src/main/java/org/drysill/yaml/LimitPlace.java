package org.drysill.yaml;

import java.io.StringReader;
import java.util.HashSet;
import java.util.Set;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionEndEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;

/** Finds where a text passes a limit; the parser itself only says that it does. */
final class LimitPlace {
  private final int deepest;
  private final int mostAliases;
  private final Set<String> collections = new HashSet<>();
  private int depth;
  private int aliases;

  private LimitPlace(int deepest, int mostAliases) {
    this.deepest = deepest;
    this.mostAliases = mostAliases;
  }

  /** The code point at which a text nests too deeply or refers to a collection too often. */
  static int of(String text, LoaderOptions limits) {
    LimitPlace place =
        new LimitPlace(limits.getNestingDepthLimit(), limits.getMaxAliasesForCollections());
    for (Event event : new Yaml(limits).parse(new StringReader(text))) {
      if (place.isPassedBy(event)) {
        return event.getStartMark().getIndex();
      }
    }
    return 0;
  }

  private boolean isPassedBy(Event event) {
    if (event instanceof CollectionStartEvent start) {
      collections.add(String.valueOf(start.getAnchor()));
      depth++;
    } else if (event instanceof CollectionEndEvent) {
      depth--;
    } else if (event instanceof AliasEvent alias && collections.contains(alias.getAnchor())) {
      aliases++;
    }
    return depth > deepest || aliases > mostAliases;
  }
}
