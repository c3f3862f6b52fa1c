package org.drysill.assess.recovery.cycle;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * Makes the measured figures of a heat recovery test, of single readings or of whole cycles.
 *
 * @param id the id of the test
 * @param more sources beside those of temperature ratios and of their errors
 */
public record TestFigures(String id, List<Citation> more) {
  private static final Citation RATIO =
      new Citation(
          "EN 13141-7 and EN 13141-8",
          Optional.empty(),
          Optional.of("temperature ratios"),
          How.MEMORY);
  private static final Citation ERROR =
      Citation.of("JCGM 100 (GUM)", "2008", "5.1.2, propagation of uncertainty", How.MEMORY);

  /** Copies the list. */
  public TestFigures {
    more = List.copyOf(more);
  }

  /** Indoors less outdoors [K]. */
  public Figure difference(Range indoor, Range outdoor) {
    return of(
        "difference",
        "indoors less outdoors",
        indoor.minus(outdoor),
        Unit.KELVIN,
        "Ti - Te",
        List.of(celsius("Ti", "room air", indoor), celsius("Te", "outdoor air", outdoor)),
        Optional.empty());
  }

  /** A measured figure whose id begins with that of the test. */
  public Figure of(
      String what,
      String name,
      Range value,
      Unit unit,
      String formula,
      List<Input> inputs,
      Optional<String> note) {
    List<Citation> sources = Stream.concat(Stream.of(RATIO, ERROR), more.stream()).toList();
    return new Figure(
        id + "." + what,
        name,
        value,
        unit,
        Basis.MEASURED,
        () -> new Working(formula, inputs, sources, note));
  }

  /** A measured temperature [°C]. */
  public static Input celsius(String symbol, String name, Range value) {
    return Input.of(symbol, name, value, Unit.CELSIUS, Basis.MEASURED);
  }
}
