package org.drysill.report.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.reference.Citation;

/**
 * How a figure came about.
 *
 * @param id id of the figure, to which its {@code working} leads
 * @param name what the figure is
 * @param formula the formula in symbols
 * @param result the figure
 * @param inputs what was put in
 * @param sources the clauses that say so
 * @param note what else a checker should know
 */
record ToldWorking(
    String id,
    String name,
    String formula,
    Outcome result,
    List<Input> inputs,
    List<Citation> sources,
    Optional<String> note) {
  /**
   * One value put into a formula. One whose own working stands in the list is told there, and by
   * its symbol and that working here.
   *
   * @param symbol its symbol in the formula
   * @param name what it is
   * @param value its value
   * @param basis on what it rests
   * @param working id of the figure that it is, where that one's working stands in the list
   */
  record Input(
      String symbol,
      Optional<String> name,
      Optional<InUnit> value,
      Optional<Basis> basis,
      Optional<String> working) {
    private static Input of(Working.Input input, Map<String, Figure> told) {
      if (isTold(input, told)) {
        return new Input(
            input.symbol(), Optional.empty(), Optional.empty(), Optional.empty(), input.figure());
      }
      return new Input(
          input.symbol(),
          Optional.of(input.name()),
          Optional.of(new InUnit(input.value(), input.unit())),
          Optional.of(input.basis()),
          input.figure().filter(told::containsKey));
    }

    /** True where the working of the same figure, by the same name, stands in the list. */
    private static boolean isTold(Working.Input input, Map<String, Figure> told) {
      Optional<Figure> figure = input.figure().map(told::get);
      return figure.isPresent()
          && figure.get().name().equals(input.name())
          && figure.get().value().equals(input.value())
          && figure.get().unit() == input.unit()
          && figure.get().basis() == input.basis();
    }
  }

  /** The workings of figures, in their order. */
  static List<ToldWorking> of(List<Figure> figures) {
    Map<String, Figure> told = new HashMap<>();
    figures.forEach(figure -> told.put(figure.id(), figure));
    return figures.stream().map(figure -> of(figure, told)).toList();
  }

  private static ToldWorking of(Figure figure, Map<String, Figure> told) {
    Working working = figure.working();
    return new ToldWorking(
        figure.id(),
        figure.name(),
        working.formula(),
        new Outcome(figure),
        working.inputs().stream().map(input -> Input.of(input, told)).toList(),
        working.sources(),
        working.note());
  }
}
