package org.drysill.report.block;

import java.util.List;

/**
 * A list of sentences.
 *
 * @param margin notes beside it
 * @param items the sentences
 */
public record Bullets(List<Note> margin, List<String> items) implements Block {
  /** Copies the lists. */
  public Bullets {
    margin = List.copyOf(margin);
    items = List.copyOf(items);
  }

  @Override
  public String kind() {
    return "bullets";
  }
}
