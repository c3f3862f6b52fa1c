package org.drysill.assess.violations;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import freemarker.template.Template;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drysill.survey.Edition;
import org.knowm.xchart.XYChart;

/**
 * Classes of {@code assess} that break the rules of the house, so that a test can see them told.
 */
public final class Assessments {
  private Assessments() {}

  /** Reads a stream. */
  public record ReadsAStream(InputStream stream) {}

  /** Reads a file. */
  public record ReadsAFile(Path file) {}

  /** Reads the net. */
  public record ReadsTheNet(URI address) {}

  /** Logs. */
  public record Logs(Logger log) {}

  /** Asks the date of the machine. */
  public static final class AsksTheDate {
    private AsksTheDate() {}

    @SuppressWarnings("JavaTimeDefaultTimeZone")
    static LocalDate today() {
      return LocalDate.now();
    }
  }

  /** Asks the date of a zone. */
  public static final class AsksTheDateOfAZone {
    private AsksTheDateOfAZone() {}

    static LocalDate today() {
      return LocalDate.now(ZoneOffset.UTC);
    }
  }

  /** Asks the instant. */
  public static final class AsksTheInstant {
    private AsksTheInstant() {}

    static Instant now() {
      return Instant.now();
    }
  }

  /** Asks the clock. */
  public static final class CountsMillis {
    private CountsMillis() {}

    static long now() {
      return System.currentTimeMillis();
    }
  }

  /** Asks the fine clock. */
  public static final class CountsNanos {
    private CountsNanos() {}

    static long now() {
      return System.nanoTime();
    }
  }

  /** Asks the machine about itself. */
  public static final class ReadsAProperty {
    private ReadsAProperty() {}

    static String user() {
      return System.getProperty("user.name");
    }
  }

  /** Words by the language of the machine. */
  public static final class TakesTheLocaleOfTheMachine {
    private TakesTheLocaleOfTheMachine() {}

    static Locale locale() {
      return Locale.getDefault();
    }
  }

  /** Numbers by the habits of the machine. */
  public static final class TakesTheLocaleOfACategory {
    private TakesTheLocaleOfACategory() {}

    static Locale locale() {
      return Locale.getDefault(Locale.Category.FORMAT);
    }
  }

  /** Throws dice. */
  public static final class ThrowsDice {
    private ThrowsDice() {}

    static double dice() {
      return Math.random();
    }
  }

  /** Throws dice that nobody can throw again. */
  public static final class ThrowsDiceWithoutSeed {
    private ThrowsDiceWithoutSeed() {}

    static Random dice() {
      return new Random();
    }
  }

  /** Breaks nothing: the same seed gives the same dice. */
  public static final class ThrowsSeededDice {
    private ThrowsSeededDice() {}

    static Random dice(long seed) {
      return new Random(seed);
    }
  }

  /** Prints. */
  public static final class Prints {
    private Prints() {}

    static void say(String words) {
      System.out.println(words);
    }
  }

  /** Complains. */
  public static final class Complains {
    private Complains() {}

    static void say(String words) {
      System.err.println(words);
    }
  }

  /** Ends the process. */
  public static final class Exits {
    private Exits() {}

    static void leave() {
      System.exit(3);
    }
  }

  /** Reads a variable of the environment. */
  public static final class ReadsAVariable {
    private ReadsAVariable() {}

    static String home() {
      return System.getenv("HOME");
    }
  }

  /** Reads the whole environment. */
  public static final class ReadsTheEnvironment {
    private ReadsTheEnvironment() {}

    static Map<String, String> all() {
      return System.getenv();
    }
  }

  /** Knows for which edition it is. */
  public record KnowsItsEdition(Edition edition) {}

  /** Fills a template. */
  public record FillsATemplate(Template template) {}

  /** Draws a chart. */
  public record DrawsAChart(XYChart chart) {}

  /** Writes a PDF. */
  public record WritesAPdf(PDDocument document) {}

  /** Renders HTML. */
  public record RendersHtml(PdfRendererBuilder builder) {}
}
