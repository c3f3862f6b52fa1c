package org.drysill.report.working;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/**
 * The inputs of a family in words. What a symbol stands for, its unit and its basis are said where
 * it first comes, and again where they differ.
 */
final class Inputs {
  private final Numbers numbers;
  private final Function<Input, Optional<String>> working;
  private final Set<String> explained;
  private final Set<String> named = new HashSet<>();
  private final Map<String, Unit> units = new HashMap<>();
  private final Map<String, Basis> bases = new HashMap<>();

  /**
   * The inputs of one family.
   *
   * @param working the number of an input's own working, where it has one
   * @param explained the symbols that were explained before; more are added
   */
  Inputs(Numbers numbers, Function<Input, Optional<String>> working, Set<String> explained) {
    this.numbers = numbers;
    this.working = working;
    this.explained = explained;
  }

  /** Inputs in one line. */
  String words(List<Input> inputs) {
    return String.join("; ", inputs.stream().map(this::words).toList());
  }

  private String words(Input input) {
    Optional<String> number = working.apply(input);
    boolean sameUnit = input.unit() == units.put(symbol(input), input.unit());
    Basis before = bases.put(symbol(input), input.basis());
    boolean first = explained.add(symbol(input) + " " + kind(input));
    boolean unnamed = named.add(symbol(input) + " " + input.name()) && number.isEmpty();
    String value =
        sameUnit
            ? numbers.workedPlain(input.value(), input.unit())
            : numbers.worked(input.value(), input.unit());
    return input.symbol()
        + " = "
        + value
        + (first || unnamed ? named(input, number) : where(input, number, before));
  }

  private static String named(Input input, Optional<String> number) {
    String where = number.orElse(Words.basis(input.basis()));
    return input.name().equals(where) ? ", " + where : ", " + input.name() + ", " + where;
  }

  private static String where(Input input, Optional<String> number, Basis before) {
    return number.isEmpty() && input.basis() == before
        ? ""
        : " (" + number.orElse(Words.basis(input.basis())) + ")";
  }

  /** The symbol without the room that it is of. */
  private static String symbol(Input input) {
    int of = input.symbol().indexOf('(');
    return of < 0 ? input.symbol() : input.symbol().substring(0, of);
  }

  /** The first words of a name, which say what kind of figure a symbol stands for. */
  private static String kind(Input input) {
    String[] words = input.name().split(" ", 3);
    return words.length < 3 ? input.name() : words[0] + " " + words[1];
  }
}
