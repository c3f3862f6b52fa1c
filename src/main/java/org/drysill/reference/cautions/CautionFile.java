package org.drysill.reference.cautions;

import java.util.Comparator;
import java.util.List;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * One file of cautions.
 *
 * @param cautions the cautions
 */
public record CautionFile(@Key(about = "The cautions") List<Caution> cautions) {
  /** Copies the list. */
  public CautionFile {
    cautions = List.copyOf(cautions);
  }

  /** All cautions, the gravest first. */
  public static List<Caution> all() {
    return DataFiles.readAll("cautions", CautionFile.class).stream()
        .flatMap(f -> f.cautions().stream())
        .sorted(Comparator.comparingInt(Caution::order).thenComparing(Caution::id))
        .toList();
  }
}
