package org.drysill.cli;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.reference.climate.NearClimate;
import org.drysill.reference.climate.ReferenceClimate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists the bundled climates. */
@Command(
    name = "climates",
    description =
        "Lists the bundled outdoor climates: what a survey calls them, and their January.",
    mixinStandardHelpOptions = true,
    footer = {"", "Examples:", "  drysill climates", "  drysill climates --near 52.5,-1.9"})
final class ClimatesCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Option(
      names = "--near",
      paramLabel = "<latitude,longitude>",
      description = "The nearest first, with their distance; north and east are positive.")
  private String near;

  ClimatesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<NearClimate> nearest = near == null ? List.of() : nearest();
    console.say(
        String.format(
            Locale.ROOT,
            "%-24s %-46s %2s %7s %6s  %-12s%s",
            "climate",
            "place",
            "",
            "Jan, C",
            "Jan, %",
            "temperatures",
            near == null ? "" : "  km"));
    if (near == null) {
      Drysill.climates().forEach(c -> console.say(line(c, "")));
    } else {
      nearest.forEach(n -> console.say(line(n.climate(), kilometres(n))));
    }
    return ExitStatus.DONE.code();
  }

  private static String kilometres(NearClimate near) {
    return String.format(Locale.ROOT, "  %,.0f", near.kilometres());
  }

  private static String line(ReferenceClimate climate, String distance) {
    return String.format(
            Locale.ROOT,
            "%-24s %-46s %2s %7.1f %6.0f  %-12s%s",
            climate.id(),
            climate.name(),
            climate.country(),
            climate.temperature().get(0).value(),
            100 * climate.humidity().get(0).value(),
            climate.temperatureSource().how().word(),
            distance)
        .stripTrailing();
  }

  private List<NearClimate> nearest() {
    String[] parts = near.split(",", -1);
    double latitude = parts.length == 2 ? number(parts[0]) : Double.NaN;
    double longitude = parts.length == 2 ? number(parts[1]) : Double.NaN;
    if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
      throw new ParameterException(
          spec.commandLine(),
          "--near takes latitude and longitude in degrees, such as 52.5,-1.9, and not " + near);
    }
    return Drysill.climatesNear(latitude, longitude);
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException notANumber) {
      return Double.NaN;
    }
  }
}
