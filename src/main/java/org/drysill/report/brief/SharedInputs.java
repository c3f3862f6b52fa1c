package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.physics.Range;

/** What was put into the figures of one family, and on what they rest: once where all share it. */
final class SharedInputs {
  private final BriefDesk desk;
  private final Formulas formulas;
  private final Map<Figure, List<Value>> values = new LinkedHashMap<>();
  private final List<Value> common = new ArrayList<>();
  private final String commonBasis;

  /**
   * A value that was put in.
   *
   * @param symbol its symbol
   * @param value it with its unit
   * @param which what tells it from others of the same symbol and value; empty for a bare value
   */
  private record Value(String symbol, String value, String which) {}

  private SharedInputs(BriefDesk desk, Formulas formulas, Collection<Figure> figures) {
    this.desk = desk;
    this.formulas = formulas;
    figures.forEach(figure -> values.put(figure, values(figure)));
    List<String> bases = figures.stream().map(desk::basis).distinct().toList();
    boolean isFamily = figures.size() > 1;
    commonBasis = isFamily && bases.size() == 1 ? bases.get(0) : "";
    if (isFamily) {
      Set<Value> shared = new HashSet<>(bare(values.values().iterator().next()));
      values.values().forEach(own -> shared.retainAll(bare(own)));
      values.values().iterator().next().stream()
          .map(SharedInputs::bare)
          .filter(shared::contains)
          .distinct()
          .forEach(common::add);
    }
  }

  static SharedInputs of(BriefDesk desk, Formulas formulas, Collection<Figure> figures) {
    return new SharedInputs(desk, formulas, figures);
  }

  /** Terms of a sum may be equal without being the same. */
  private List<Value> values(Figure figure) {
    return figure.working().inputs().stream().map(this::value).distinct().toList();
  }

  private Value value(Working.Input input) {
    return new Value(
        formulas.symbol(input.symbol()),
        desk.numbers().worked(Range.exactly(input.value().likely()), input.unit()),
        input.figure().orElse(""));
  }

  private static Value bare(Value value) {
    return new Value(value.symbol(), value.value(), "");
  }

  /** What stands once for a symbol: a sum has several values of one. */
  private static List<Value> bare(List<Value> values) {
    Map<String, Long> often =
        values.stream().collect(Collectors.groupingBy(Value::symbol, Collectors.counting()));
    return values.stream().filter(v -> often.get(v.symbol()) == 1).map(SharedInputs::bare).toList();
  }

  /** What all figures of the family share, as a sentence; empty where they share nothing. */
  String note() {
    String all =
        Stream.concat(Stream.of(commonBasis), common.stream().map(SharedInputs::told))
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining("; "));
    return all.isEmpty() ? "" : desk.say("workings.each", all);
  }

  /** On what a figure rests; empty where all of the family rest on the same. */
  String basis(Figure figure) {
    return commonBasis.isEmpty() ? desk.basis(figure) : "";
  }

  /** What was put into one figure and not into all; several values of one symbol after it. */
  String of(Figure figure) {
    List<String> told = new ArrayList<>();
    String symbol = "";
    for (Value value : values.get(figure)) {
      if (!common.contains(bare(value))) {
        told.add(value.symbol().equals(symbol) ? value.value() : told(value));
        symbol = value.symbol();
      }
    }
    return String.join("; ", told);
  }

  private static String told(Value value) {
    return value.symbol() + " = " + value.value();
  }
}
