package org.drysill.benchmark;

import org.drysill.options.packs.PackageRun;

/**
 * How long every package of a made-up home takes by month, from 20,000 packages on, beside a bare
 * loop that evaluates only the recurrence of the zones, twelve months for each air side, measured
 * in the same run.
 *
 * <pre>java -cp target/drysill.jar:target/test-classes org.drysill.benchmark.Packages</pre>
 */
final class Packages {
  private Packages() {}

  public static void main(String[] arguments) {
    for (int airMembers : new int[] {5, 6, 7, 8, 9}) {
      PackageRun.print(airMembers);
    }
  }
}
