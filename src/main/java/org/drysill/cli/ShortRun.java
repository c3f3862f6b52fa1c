package org.drysill.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Tells the Java machine that this process ends after one report.
 *
 * <p>Left alone, its optimising compiler spends two thirds of such a run on code that is about to
 * be no longer needed, and the simple compiler waits with its best code until the optimising one is
 * through. A jar cannot bring options of the machine along, but the machine takes directives for
 * its compilers while it runs. The results are the same with or without.
 *
 * <p>Packages in samples hour by hour are the exception: some few short loops that run for seconds,
 * and that only the optimising compiler makes work on several samples at once. What calls them is
 * left out like all else.
 */
final class ShortRun {
  /** What is optimised, then all else: the first that fits counts. */
  private static final String HARDLY_OPTIMISING =
      """
      [
        {
          match: [
            "org/drysill/options/packs/hours/HourLoops.*",
            "org/drysill/physics/air/SaturationTable.*",
            "org/drysill/physics/zones/LaneLoops.*"
          ],
          c2: {Exclude: false}
        },
        {match: "*.*", c2: {Exclude: true}}
      ]
      """;

  private ShortRun() {}

  /** Begins in the background; a machine that knows no such directives runs on as it is. */
  static void begin() {
    if (hasOptimisingCompiler()) {
      Thread teller = new Thread(ShortRun::tell, "short run");
      teller.setDaemon(true);
      teller.start();
    }
  }

  /** False where the command line has left it out already; the machine says so of itself. */
  private static boolean hasOptimisingCompiler() {
    String mode = System.getProperty("java.vm.info", "");
    return mode.contains("mixed mode") && !mode.contains("emulated-client");
  }

  /** Tells the machine, and then leaves nothing behind. */
  static void tell() {
    try {
      Path directives = Files.createTempFile("drysill", ".json");
      try {
        Files.writeString(directives, HARDLY_OPTIMISING);
        ManagementFactory.getPlatformMBeanServer()
            .invoke(
                new ObjectName("com.sun.management:type=DiagnosticCommand"),
                "compilerDirectivesAdd",
                new Object[] {new String[] {directives.toString()}},
                new String[] {String[].class.getName()});
      } finally {
        Files.delete(directives);
      }
    } catch (IOException | JMException notToldThen) {
      // Only slower: nothing that the person at the shell could want to hear of.
    }
  }
}
