package org.drysill.benchmark;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFixtures;
import org.drysill.survey.log.read.LogReader;

/**
 * How fast a log is read, and in how much memory: this program, the bare loop of its CSV library
 * over the same file, and {@code wc -l}, each in a process of its own, for a short and a long log
 * of one-minute rows. Run on Linux after {@code mvn package}; DEVELOPERS.md has the command.
 */
public final class Logs {
  private static final String CLASSES =
      System.getProperty("benchmark.classes", "target/drysill.jar:target/test-classes");
  private static final int MILLION = 1_000_000;

  private Logs() {}

  private record Cost(double wallSeconds, double cpuSeconds, double peakMegabytes) {}

  /** A mode and a file make one reading; nothing compares all. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length == 2) {
      readOnce(arguments[0], Path.of(arguments[1]));
      return;
    }
    Path folder = Files.createTempDirectory("logs");
    System.out.printf(
        Locale.ROOT, "%-30s %8s %8s %12s %9s%n", "", "wall, s", "CPU, s", "rows/s", "peak, MB");
    for (int rows : new int[] {MILLION, 10 * MILLION}) {
      Path file = folder.resolve("minutes-" + rows + ".csv");
      write(file, rows);
      System.out.printf(Locale.ROOT, "%d rows, %.0f MB%n", rows, Files.size(file) / 1e6);
      print("  this program", rows, run(java("read", file)));
      print("  the bare loop of the library", rows, run(java("bare", file)));
      print("  wc -l", rows, run(List.of("wc", "-l", file.toString())));
      Files.delete(file);
    }
    Files.delete(folder);
  }

  private static void readOnce(String mode, Path file) throws IOException {
    if (mode.equals("bare")) {
      long fields = 0;
      try (var rows = CsvReader.builder().ofCsvRecord(file)) {
        for (var row : rows) {
          fields += row.getFieldCount();
        }
      }
      System.out.println(fields);
      return;
    }
    LogContent content =
        new LogReader(file.getParent(), LogFixtures.LIMITS)
            .read(LogFixtures.logger(file.getFileName().toString()), Optional.empty())
            .content()
            .orElseThrow();
    System.out.println(content.figures() + " in " + content.series().size() + " bins");
  }

  /** A room with a course of the day, some noise, and a gap now and then. */
  private static void write(Path file, int rows) throws IOException {
    DateTimeFormatter pattern = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss");
    LocalDateTime at = LocalDateTime.of(2007, 1, 1, 0, 0);
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
      out.write("Time,Temperature,Humidity,CO2\n");
      for (int i = 0; i < rows; i++) {
        double day = Math.sin(i * 2 * Math.PI / 1440);
        long noise = i * 7919L % 100;
        out.write(pattern.format(at));
        out.write(',' + decimal(1950 + 150 * day + noise / 10.0));
        out.write(',' + decimal(5500 - 500 * day + noise));
        out.write("," + Math.round(800 + 300 * day + noise) + '\n');
        at = at.plusMinutes(i % 5000 == 0 ? 30 : 1);
      }
    }
  }

  private static String decimal(double hundredths) {
    long whole = Math.round(hundredths);
    return whole / 100 + "." + (whole % 100 < 10 ? "0" : "") + whole % 100;
  }

  private static List<String> java(String mode, Path file) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-Xmx256m", "-cp", CLASSES, Logs.class.getName(), mode, file.toString()));
    return command;
  }

  private static Cost run(List<String> command) throws IOException, InterruptedException {
    double before = cpuOfChildren();
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
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

  private static void print(String name, int rows, Cost cost) {
    System.out.printf(
        Locale.ROOT,
        "%-30s %8.2f %8.2f %12.0f %9.0f%n",
        name,
        cost.wallSeconds(),
        cost.cpuSeconds(),
        rows / cost.wallSeconds(),
        cost.peakMegabytes());
  }
}
