package org.drysill.report.sheet;

import java.util.List;
import java.util.Map;
import org.drysill.report.font.Fonts;
import org.drysill.report.language.Language;
import org.drysill.report.page.HtmlPage;
import org.drysill.report.page.OwnTemplates;
import org.drysill.report.page.Templates;
import org.drysill.report.pdf.PdfMetadata;
import org.drysill.report.pdf.PdfRenderer;
import org.drysill.report.subject.Subject;

/** The way out for the sheet: words become a page, the page a PDF and an HTML file. */
public final class SheetWriter {
  private static final String TEMPLATE = "sheet.ftlh";

  private SheetWriter() {}

  /** Makes the sheet of a home in a language. */
  public static Sheet write(Subject subject, Language language) {
    return write(subject, language, OwnTemplates.NONE);
  }

  /** The same with templates of a user's own. */
  public static Sheet write(Subject subject, Language language, OwnTemplates own) {
    HouseholdSheet sheet = SheetPage.of(subject, language);
    Fonts fonts = new Fonts();
    Templates templates = new Templates(fonts, own);
    String xhtml = templates.render(TEMPLATE, Map.of("sheet", sheet, "charts", Map.of()));
    byte[] pdf =
        new PdfRenderer(fonts).render(xhtml, Map.of(), metadata(subject, sheet), List.of());
    return new Sheet(
        pdf,
        () -> new HtmlPage(fonts).render(xhtml, Map.of(), templates.style("screen.css")),
        sheet.heading());
  }

  private static PdfMetadata metadata(Subject subject, HouseholdSheet sheet) {
    return new PdfMetadata(
        sheet.title(),
        "",
        sheet.heading(),
        List.of(),
        sheet.language(),
        subject.provenance().program() + " " + subject.provenance().version(),
        subject.survey().visit().date());
  }
}
