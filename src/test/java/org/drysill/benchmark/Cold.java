package org.drysill.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * What one report costs in a fresh process, beside what any such process costs: the machine alone,
 * and one trivial page made with the same libraries. The commands take turns, so that a busy moment
 * strikes all of them. Run on Linux after {@code mvn package}; DEVELOPERS.md has the command.
 */
public final class Cold {
  private static final String JAR = "target/drysill.jar";
  private static final String ARCHIVE = "target/drysill.jsa";
  private static final String CLASSES = JAR + ":target/test-classes";
  private static final String ONE_PAGE = OnePage.class.getName();

  private Cold() {}

  private record Command(String name, List<String> words) {}

  private record Cost(double wallSeconds, double cpuSeconds, double peakMegabytes) {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5;
    String survey = "example-surveys/1930s-terrace/survey.yaml";
    Path pdf = Files.createTempFile("report", ".pdf");
    String[] report = {"-jar", JAR, "report", survey, "-o", pdf.toString(), "--quiet"};
    run(java(fast("-XX:ArchiveClassesAtExit="), report));
    List<Command> commands =
        List.of(
            new Command("the machine alone", java(List.of(), "-version")),
            new Command("one trivial page", java(List.of(), "-cp", CLASSES, ONE_PAGE)),
            new Command("report", java(List.of(), report)),
            new Command("report, fast form", java(fast("-XX:SharedArchiveFile="), report)));
    List<List<Cost>> costs = new ArrayList<>();
    commands.forEach(c -> costs.add(new ArrayList<>()));
    for (int round = 0; round < rounds; round++) {
      for (int i = 0; i < commands.size(); i++) {
        costs.get(i).add(run(commands.get(i).words()));
      }
    }
    System.out.printf(Locale.ROOT, "median of %d; %s%n", rounds, load());
    System.out.printf(Locale.ROOT, "%-20s %8s %8s %10s%n", "", "wall, s", "CPU, s", "peak, MB");
    for (int i = 0; i < commands.size(); i++) {
      System.out.printf(
          Locale.ROOT,
          "%-20s %8.2f %8.2f %10.0f%n",
          commands.get(i).name(),
          median(costs.get(i), Cost::wallSeconds),
          median(costs.get(i), Cost::cpuSeconds),
          median(costs.get(i), Cost::peakMegabytes));
    }
    Files.delete(pdf);
  }

  /** The options that README.md gives for the fast form. */
  private static List<String> fast(String archiveOption) {
    return List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", archiveOption + ARCHIVE);
  }

  private static List<String> java(List<String> options, String... words) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of(words));
    return command;
  }

  /** Runs a command and looks at what the system counts of it. */
  private static Cost run(List<String> command) throws IOException, InterruptedException {
    double before = cpuOfChildren();
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    double peak = 0;
    while (process.isAlive()) {
      peak = Math.max(peak, peak(process.pid()));
      Thread.sleep(2);
    }
    double wall = (System.nanoTime() - begin) / 1e9;
    if (process.waitFor() != 0) {
      throw new IOException("failed: " + String.join(" ", command));
    }
    return new Cost(wall, cpuOfChildren() - before, peak);
  }

  /**
   * The most memory that a process has had so far [MB]; the last look is nearly the whole truth.
   */
  private static double peak(long process) {
    try (var lines = Files.lines(Path.of("/proc", Long.toString(process), "status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .findFirst()
          .orElse(0);
    } catch (IOException | UncheckedIOException gone) {
      return 0;
    }
  }

  /** User and system time of all processes that ran so far [s], which Linux counts in 1/100 s. */
  private static double cpuOfChildren() throws IOException {
    String stat = Files.readString(Path.of("/proc/self/stat"));
    String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
    return (Long.parseLong(fields[13]) + Long.parseLong(fields[14])) / 100.0;
  }

  private static String load() throws IOException {
    return "load average "
        + Files.readString(Path.of("/proc/loadavg")).split(" ", -1)[0]
        + " on "
        + Runtime.getRuntime().availableProcessors()
        + " processors, Java "
        + Runtime.version();
  }

  private static double median(List<Cost> costs, ToDoubleFunction<Cost> of) {
    return costs.stream()
        .sorted(Comparator.comparingDouble(of))
        .mapToDouble(of)
        .skip(costs.size() / 2)
        .findFirst()
        .orElseThrow();
  }
}
