package org.drysill.benchmark;

import java.nio.file.Path;
import java.util.Locale;
import org.drysill.Drysill;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.OptionsBasis;
import org.drysill.options.OptionsStudy;
import org.drysill.options.packs.PackageRun;

/**
 * How long every package of a made-up home takes by month, from 20,000 packages on, beside a bare
 * loop that evaluates only the recurrence of the zones, twelve months for each air side, measured
 * in the same run. Then, of the terrace, samples of the packages that may turn out best, a package
 * hour by hour, and the whole study of options.
 *
 * <pre>java -cp target/drysill.jar:target/test-classes org.drysill.benchmark.Packages</pre>
 */
final class Packages {
  private Packages() {}

  public static void main(String[] arguments) {
    for (int airMembers : new int[] {5, 6, 7, 8, 9}) {
      PackageRun.print(airMembers);
    }
    Assessment terrace =
        Drysill.check(Path.of("example-surveys/1930s-terrace/survey.yaml"))
            .assessment()
            .orElseThrow();
    OptionsBasis basis = OptionsFixtures.quickBasis(terrace.home());
    PackageRun.print("terrace", terrace, basis);
    PackageRun.printHours("terrace", terrace, basis);
    double best = Double.MAX_VALUE;
    for (int round = 0; round < 3; round++) {
      long start = System.nanoTime();
      OptionsStudy.study(terrace, basis);
      best = Math.min(best, (System.nanoTime() - start) / 1e6);
    }
    System.out.println(String.format(Locale.ROOT, "the terrace's options, warm: %.0f ms", best));
  }
}
