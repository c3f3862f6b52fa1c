package org.drysill.report;

import java.util.List;
import java.util.function.Consumer;
import org.drysill.report.brief.Brief;
import org.drysill.report.evidence.FilesInside;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.evidence.Sha256;
import org.drysill.report.font.Fonts;
import org.drysill.report.json.ResultsJson;
import org.drysill.report.page.HtmlPage;
import org.drysill.report.page.OwnTemplates;
import org.drysill.report.page.Templates;
import org.drysill.report.pdf.PdfRenderer;
import org.drysill.report.subject.Provenance;
import org.drysill.report.subject.Subject;
import org.drysill.report.view.ReportView;
import org.drysill.survey.Edition;

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
    byte[] json = ResultsJson.of(named);
    Subject subject = named.withResults(Sha256.of(json));
    stages.accept("wording");
    Filling filling =
        subject.edition() == Edition.BRIEF
            ? Filling.of(Brief.of(subject, subject.provenance().language()))
            : Filling.of(ReportView.of(subject));
    stages.accept("filling templates");
    String xhtml = templates.render(filling.template(), filling.model());
    byte[] pdf =
        renderer.render(
            xhtml,
            filling.charts(),
            filling.metadata(producer(subject.provenance()), subject.survey().visit().date()),
            FilesInside.of(inputs, json));
    return new Report(
        pdf,
        () -> htmlPage.render(xhtml, filling.charts(), templates.style("screen.css")),
        json,
        filling.heading());
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
}
