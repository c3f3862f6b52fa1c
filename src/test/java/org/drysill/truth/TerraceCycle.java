package org.drysill.truth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;

/**
 * Makes up the log of the cycles of the kitchen's unit in the terrace, an hour of the visit every
 * two seconds. The same seed makes the same file:
 *
 * <pre>java -cp target/classes:target/test-classes org.drysill.truth.TerraceCycle
 * example-surveys/1930s-terrace/logs</pre>
 *
 * <p>The unit was switched on with the logger, so that its store settles during the first cycles;
 * for most of a minute in between the logger lay in a bag.
 */
public final class TerraceCycle {
  /** Its true ratio is 0.55. */
  static final CycleTruth TRUTH =
      new CycleTruth(1931, 2.62, 130, 70, 4, 5, 0.06, 0.1, 2, 64, 20.0, 3.4);

  private static final LocalDateTime START = LocalDateTime.of(2026, 1, 22, 10, 54);
  private static final double BAG_FROM = 1960;
  private static final double BAG_TO = 2010;

  private TerraceCycle() {}

  /** Writes the file into the folder that is named. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Files.writeString(folder.resolve("cycle.csv"), csv());
  }

  static String csv() {
    CycleMaker.Made made = CycleMaker.make(TRUTH);
    List<CycleMaker.Row> rows =
        made.rows().stream()
            .filter(row -> row.seconds() < BAG_FROM || row.seconds() > BAG_TO)
            .toList();
    return new CycleMaker.Made(rows, made.supplyRatio(), made.exhaustRatio()).csv(START);
  }
}
