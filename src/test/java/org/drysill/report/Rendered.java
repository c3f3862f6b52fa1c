package org.drysill.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drysill.Lately;
import org.drysill.ReportWishes;
import org.drysill.Reports;
import org.drysill.report.pdf.TextOutside;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * A report as its readers get it, made once for all tests that look at it.
 *
 * @param report the report
 * @param first the lines of the first page, with one space wherever there is any
 * @param pages the text of each page, without spaces
 * @param outside letters that stand outside the page or at its very edge
 */
record Rendered(Report report, List<String> first, List<String> pages, List<String> outside) {
  private static final Lately<Report, Rendered> READ = new Lately<>(16);
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");

  static Rendered example(String name) {
    return example(name, ReportWishes.NONE);
  }

  static Rendered example(String name, ReportWishes wishes) {
    return of(Path.of("example-surveys", name, "survey.yaml"), wishes);
  }

  /** The page for a screen without its marks: margin notes and line ends cut no sentence there. */
  String words() {
    String page = report.html().replaceAll("(?s)<(style|script)\\b.*?</\\1>", "");
    return SPACES
        .matcher(page.replaceAll("<[^>]*>", "").replace("&#160;", " ").replace("&#39;", "'"))
        .replaceAll(" ");
  }

  static Rendered of(Path survey) {
    return of(survey, ReportWishes.NONE);
  }

  static Rendered of(Path survey, ReportWishes wishes) {
    Report report = Reports.of(survey, wishes);
    return READ.of(report, () -> read(report));
  }

  private static Rendered read(Report report) {
    try (PDDocument document = Loader.loadPDF(report.pdf())) {
      List<String> first =
          text(document, 1).lines().map(l -> SPACES.matcher(l).replaceAll(" ").strip()).toList();
      List<String> pages = new ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        pages.add(squeezed(text(document, page)));
      }
      return new Rendered(report, first, pages, TextOutside.of(document));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(true);
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }

  static String squeezed(String text) {
    return SPACES.matcher(text).replaceAll("");
  }

  String text() {
    return String.join("", pages);
  }

  /** The results as maps, lists and scalars. */
  Object results() {
    // The parser thinks 3 MB of text an attack; results hold every working.
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(1 << 24);
    return new Yaml(new SafeConstructor(options))
        .load(new String(report.json(), StandardCharsets.UTF_8));
  }
}
