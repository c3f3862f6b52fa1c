package org.drysill.report.working;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.report.words.Words;

/**
 * What the names of a family begin with, such as <em>Dew point of the air in the …</em>: the first
 * figure is named in full, the others by the words that follow.
 */
final class SharedName {
  /** Fewer words in common are no name. */
  private static final int LEAST = 3;

  private final List<List<String>> names;
  private final int common;

  SharedName(List<String> names) {
    this.names = names.stream().map(name -> Arrays.asList(name.split(" "))).toList();
    int shortest = this.names.stream().mapToInt(List::size).min().orElse(0);
    this.common = (int) IntStream.range(0, shortest).takeWhile(this::isCommon).count();
  }

  /** The name as it is printed: {@code again} where it is that of the first, too. */
  String of(int index) {
    List<String> words = names.get(index);
    if (index > 0 && words.equals(names.get(0))) {
      return "again";
    }
    boolean whole = index == 0 || common < LEAST || common == words.size();
    return Words.capital(String.join(" ", whole ? words : words.subList(common, words.size())));
  }

  /** Whether all names have the same word there. */
  private boolean isCommon(int at) {
    String word = names.get(0).get(at);
    return names.stream().allMatch(name -> name.get(at).equals(word));
  }
}
