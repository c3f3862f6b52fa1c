package org.drysill.reference.readings;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What to measure next, by the sort of what is not known.
 *
 * @param most the most readings that are asked for
 * @param leastShare the least share of a spread for which a reading is asked [1]
 * @param advice the readings
 */
public record ReadingAdvice(
    @Key(about = "The most readings that are asked for", min = 1) int most,
    @Key(about = "Least share of a spread for which a reading is asked") Sourced leastShare,
    @Key(about = "The readings") List<Advice> advice) {
  /** Copies the list. */
  public ReadingAdvice {
    advice = List.copyOf(advice);
  }

  /** The published advice. */
  public static ReadingAdvice read() {
    return DataFiles.read("defaults/next-readings.yaml", ReadingAdvice.class);
  }

  /** The reading that settles a sort of what is not known; empty where none does. */
  public Optional<Advice> of(String kind) {
    return advice.stream().filter(a -> a.kind().equals(kind)).findFirst();
  }

  /**
   * A reading.
   *
   * @param kind the sort of what is not known
   * @param ask what is to be done and where, a sentence with {@code {name}} or {@code {place}}
   * @param with with what
   * @param when when and how long
   * @param covers words of other instructions that it makes needless
   */
  public record Advice(
      @Key(about = "The sort of what is not known", example = "leaks") String kind,
      @Key(about = "What is to be done and where") String ask,
      @Key(about = "With what") String with,
      @Key(about = "When and how long") String when,
      @Key(about = "Words of other instructions that it makes needless") List<String> covers) {
    /** Copies the list. */
    public Advice {
      covers = List.copyOf(covers);
    }
  }
}
