package org.drysill.benchmark;

import java.util.List;
import java.util.Locale;
import org.drysill.assess.model.Coverage;
import org.drysill.assess.model.SyntheticHome;

/**
 * Whether the moisture model finds what is known to be true: homes with drawn air and water, read
 * with instruments that err, assessed from their surveys. Prints by unknown how often the stated
 * interval holds the truth, the bias and the width of the interval.
 *
 * <pre>java -cp target/classes:target/test-classes:… org.drysill.benchmark.ModelExperiment [homes]
 * </pre>
 */
final class ModelExperiment {
  private static final List<String> UNKNOWNS =
      List.of("model.water", "model.air", "model.leaks", "model.doors");

  private ModelExperiment() {}

  public static void main(String[] arguments) {
    int homes = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
    for (SyntheticHome.Draw draw : SyntheticHome.Draw.values()) {
      for (boolean measured : new boolean[] {false, true}) {
        System.out.println(
            (draw == SyntheticHome.Draw.BELIEVED
                    ? "drawn as believed"
                    : "drawn evenly within bounds")
                + (measured ? ", leaks and fans measured" : ", leaks and fans not measured"));
        List<SyntheticHome> drawn = SyntheticHome.some(homes, measured, draw);
        UNKNOWNS.forEach(unknown -> print(unknown, Coverage.of(unknown, drawn)));
        System.out.printf(
            Locale.ROOT,
            "  readings told as not explained: %.1f %%%n",
            100 * Coverage.leftOut(drawn));
      }
    }
  }

  private static void print(String unknown, Coverage coverage) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "  %-12s held in %5.1f %% of %d  bias %+5.1f %%  within a factor of %.2f (before %.2f)",
            unknown.substring(unknown.indexOf('.') + 1),
            100 * coverage.share(),
            coverage.cases(),
            100 * (Math.exp(coverage.bias()) - 1),
            Math.exp(coverage.width()),
            Math.exp(coverage.widthBefore())));
  }
}
