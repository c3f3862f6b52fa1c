package org.drysill.yaml;

import java.util.List;
import java.util.Locale;

/** An enum whose constants are words of the trade, written in files as the trade writes them. */
public interface Worded {
  /** The constant's Java name; every enum has it. */
  String name();

  /** The word as it stands in a file and in the report: the name in lower case, with spaces. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Other spellings that are understood. */
  default List<String> synonyms() {
    return List.of();
  }
}
