package org.drysill.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.drysill.report.evidence.FilesInside;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.evidence.Sha256;
import org.drysill.report.font.Fonts;
import org.drysill.report.json.ResultsJson;
import org.drysill.report.page.HtmlPage;
import org.drysill.report.page.OwnTemplates;
import org.drysill.report.page.Templates;
import org.drysill.report.pdf.PdfMetadata;
import org.drysill.report.pdf.PdfRenderer;
import org.drysill.report.subject.Provenance;
import org.drysill.report.subject.Subject;
import org.drysill.report.view.ReportView;
import org.drysill.report.working.Found;

/**
 * The way out: results become a view, the view a page, the page a PDF and an HTML file. Nothing is
 * written to disk here. Not for use by two threads at once.
 */
public final class ReportWriter {
  private final Templates templates;
  private final PdfRenderer renderer;
  private final HtmlPage htmlPage;
  private final Consumer<String> stages;

  /** A writer that reads fonts and templates when they are first asked for. */
  public ReportWriter() {
    this(stage -> {});
  }

  /**
   * The same, telling what it is about to do.
   *
   * @param stages told of each stage as it begins, in one or two words
   */
  public ReportWriter(Consumer<String> stages) {
    this(OwnTemplates.NONE, stages);
  }

  /**
   * The same, with templates of a user's own.
   *
   * @param own the templates
   * @param stages told of each stage as it begins, in one or two words
   */
  public ReportWriter(OwnTemplates own, Consumer<String> stages) {
    Fonts fonts = new Fonts();
    this.stages = stages;
    this.templates = new Templates(fonts, own);
    this.renderer = new PdfRenderer(fonts, stages);
    this.htmlPage = new HtmlPage(fonts);
  }

  /**
   * Makes the report in all its forms.
   *
   * @param named what it is about
   * @param inputs the files that it is made from, for the PDF to bring along
   */
  public Report write(Subject named, List<InputFile> inputs) {
    stages.accept("listing results");
    byte[] json = json(named);
    Subject subject = named.withResults(Sha256.of(json));
    stages.accept("wording");
    ReportView view = ReportView.of(subject);
    stages.accept("filling templates");
    String xhtml = templates.render("report.ftlh", Map.of("view", view, "charts", view.charts()));
    byte[] pdf =
        renderer.render(
            xhtml, view.charts(), metadata(subject, view), FilesInside.of(inputs, json));
    return new Report(
        pdf,
        () -> htmlPage.render(xhtml, view.charts(), templates.style("screen.css")),
        json,
        view.verdict().heading());
  }

  private static PdfMetadata metadata(Subject subject, ReportView view) {
    return new PdfMetadata(
        view.title(),
        view.author(),
        view.verdict().heading(),
        view.keywords(),
        "en",
        producer(subject.provenance()),
        subject.survey().visit().date());
  }

  /** Java is told of, for the packing of the bytes depends on it; nothing that is shown does. */
  private static String producer(Provenance provenance) {
    return provenance.program()
        + " "
        + provenance.version()
        + ", Java "
        + Runtime.version()
        + " ("
        + System.getProperty("java.vm.vendor")
        + ")";
  }

  /** The results by the names of the survey format. */
  static byte[] json(Subject subject) {
    Map<String, Object> sections = new LinkedHashMap<>();
    sections.put("drysill", 1);
    sections.put("visit_date", subject.survey().visit().date().toString());
    sections.put("ventilation", subject.ventilation());
    sections.put("humidity", humidity(subject));
    sections.put("moisture", subject.moisture());
    sections.put("moisture_model", subject.model());
    sections.put("condensation", condensation(subject));
    sections.put("heat_recovery", subject.recovery());
    sections.put("change", subject.change());
    sections.put("timeline", subject.timeline());
    sections.put("options", subject.options());
    sections.put("cautions", subject.cautions().shown());
    Found found = Found.in(subject.results());
    sections.put("assumptions", found.assumptions());
    sections.put("provenance", subject.provenance());
    return ResultsJson.of(sections, found.figures());
  }

  /** Readings and logs stand under one key. */
  private static Map<String, Object> humidity(Subject subject) {
    Map<String, Object> parts = new LinkedHashMap<>(ResultsJson.parts(subject.humidity()));
    parts.put("logs", subject.logs());
    parts.put("logged_air", subject.assessment().loggedAir());
    return parts;
  }

  /** Surfaces and what is within the walls stand under one key. */
  private static Map<String, Object> condensation(Subject subject) {
    Map<String, Object> parts = new LinkedHashMap<>(ResultsJson.parts(subject.condensation()));
    parts.put("walls", subject.elements().walls());
    parts.put("logged_surfaces", subject.assessment().loggedSurfaces());
    return parts;
  }
}
